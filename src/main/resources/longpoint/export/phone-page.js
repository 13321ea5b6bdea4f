
"use strict";
// Ticks stay in the browser's own store; some viewers of attached files refuse one.
var store = null;
try {
  store = window.localStorage;
  store.setItem("longpoint.try", "1");
  store.removeItem("longpoint.try");
} catch (refused) {
  store = null;
}

// In the language of the page.
var words = document.body.dataset;

function each(where, what, job) {
  Array.prototype.forEach.call(where.querySelectorAll(what), job);
}

function count(table) {
  var all = table.querySelectorAll("input").length;
  var done = table.querySelectorAll("input:checked").length;
  var shown = table.querySelector(".count");
  shown.textContent = done === 0
    ? String(all) : words.count.replace("[done]", done).replace("[all]", all);
  shown.classList.toggle("all", done === all);
}

function keep(box) {
  if (store === null) {
    return;
  }
  try {
    if (box.checked) {
      store.setItem("longpoint." + box.dataset.row, "1");
    } else {
      store.removeItem("longpoint." + box.dataset.row);
    }
  } catch (full) {
    told(false);
  }
}

function told(kept) {
  document.querySelector(".keep").textContent = kept ? words.kept : words.lost;
}

each(document, "details", function (table) {
  each(table, "input", function (box) {
    if (store !== null) {
      box.checked = store.getItem("longpoint." + box.dataset.row) === "1";
    }
    box.addEventListener("change", function () {
      keep(box);
      count(table);
    });
  });
  count(table);
});
told(store !== null);

var figures = {
  open: function () { each(document, "details", function (t) { t.open = true; }); },
  close: function () { each(document, "details", function (t) { t.open = false; }); },
  clear: function () {
    if (window.confirm(words.ask)) {
      each(document, "input", function (box) { box.checked = false; keep(box); });
      each(document, "details", count);
    }
  }
};
each(document, "#figures button", function (button) {
  button.addEventListener("click", figures[button.dataset.job]);
});
window.addEventListener("beforeprint", figures.open);

// A sheet grows inside its frame, about the place under the fingers.
function zoomable(sheet) {
  var view = sheet.querySelector(".view");
  var svg = view.querySelector("svg");
  var zoom = 1;
  var spread = 0;

  function set(next, x, y) {
    var bounded = Math.min(16, Math.max(1, next));
    var left = (view.scrollLeft + x) / zoom;
    var top = (view.scrollTop + y) / zoom;
    zoom = bounded;
    svg.style.width = 100 * zoom + "%";
    view.scrollLeft = left * zoom - x;
    view.scrollTop = top * zoom - y;
  }
  function by(factor) {
    set(zoom * factor, view.clientWidth / 2, view.clientHeight / 2);
  }
  function middle(touches) {
    var box = view.getBoundingClientRect();
    return {
      x: (touches[0].clientX + touches[1].clientX) / 2 - box.left,
      y: (touches[0].clientY + touches[1].clientY) / 2 - box.top,
      apart: Math.hypot(
        touches[0].clientX - touches[1].clientX, touches[0].clientY - touches[1].clientY)
    };
  }
  view.addEventListener("touchstart", function (event) {
    spread = event.touches.length === 2 ? middle(event.touches).apart : 0;
  }, { passive: true });
  view.addEventListener("touchmove", function (event) {
    if (event.touches.length !== 2 || spread === 0) {
      return;
    }
    event.preventDefault();
    var now = middle(event.touches);
    set(zoom * now.apart / spread, now.x, now.y);
    spread = now.apart;
  }, { passive: false });
  view.addEventListener("wheel", function (event) {
    if (event.ctrlKey) {
      event.preventDefault();
      var box = view.getBoundingClientRect();
      set(zoom * Math.exp(-event.deltaY / 200), event.clientX - box.left, event.clientY - box.top);
    }
  }, { passive: false });

  var full = sheet.querySelector("[data-job=full]");
  var face = full.textContent;
  var name = full.getAttribute("aria-label");
  function fill(on) {
    sheet.classList.toggle("full", on);
    full.textContent = on ? full.dataset.backFace : face;
    full.setAttribute("aria-label", on ? full.dataset.back : name);
  }
  var jobs = {
    in: function () { by(1.5); },
    out: function () { by(1 / 1.5); },
    fit: function () { set(1, 0, 0); },
    full: function () { fill(!sheet.classList.contains("full")); }
  };
  each(sheet, "button", function (button) {
    button.addEventListener("click", jobs[button.dataset.job]);
  });
  document.addEventListener("keydown", function (event) {
    if (event.key === "Escape") {
      fill(false);
    }
  });
  sheet.classList.add("zooms");
}
each(document, ".sheet", zoomable);
each(document, ".bar", function (bar) { bar.hidden = false; });
