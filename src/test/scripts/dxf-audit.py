"""Audits DXF files with ezdxf and compares what dimensions measure with what they say."""
import sys
from collections import Counter

import ezdxf

failed = False
for name in sys.argv[1:]:
    document = ezdxf.readfile(name)
    audit = document.audit()
    space = document.modelspace()
    kinds = dict(sorted(Counter(e.dxftype() for e in space).items()))
    print(f"{name}: {document.dxfversion}, unit {document.units}, {kinds}")
    for finding in audit.errors + audit.fixes:
        failed = True
        print(f"  {finding.message}")
    for dimension in space.query("DIMENSION"):
        # ezdxf takes an aligned dimension (type 1) for a level one, so only type 0 is compared.
        if dimension.dimtype == 0:
            says = dimension.dxf.actual_measurement
            if abs(dimension.get_measurement() - says) > 1e-6:
                failed = True
                print(f"  dimension {dimension.dxf.handle} says {says}")
sys.exit(1 if failed else 0)
