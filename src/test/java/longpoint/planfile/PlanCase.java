package longpoint.planfile;

import java.util.List;

/**
 * Plan files, good and bad, for the reader and the schema to agree on.
 *
 * @param json with single quotes for double ones
 * @param wrong part of the reader's message; empty when the file is good
 * @param place JSON pointer the reader names
 */
record PlanCase(String name, String json, String wrong, String place) {
  private static final String HEAD = "'format':'longpoint-plan','version':1,'unit':'in'";
  private static final String WALLS = "'outline':[[0,0],[480,0],[480,336],[0,336]]";

  String text() {
    return json.replace('\'', '"');
  }

  boolean good() {
    return wrong.isEmpty();
  }

  private static PlanCase good(String name, String json) {
    return new PlanCase(name, json, "", "");
  }

  private static PlanCase bad(String name, String place, String wrong, String json) {
    return new PlanCase(name, json, wrong, place);
  }

  private static String plan(String more) {
    return "{" + HEAD + "," + more + "}";
  }

  private static String part(String more) {
    return plan("'parts':[{'id':'a'," + WALLS + ",'plateHeight':97.125" + more + "}]");
  }

  private static String edge(String edge) {
    return part(",'edges':[{'kind':'gable'},{'kind':'gable'}," + edge + ",{'kind':'abutment'}]");
  }

  static List<PlanCase> all() {
    return List.of(
        good("no parts", plan("'parts':[]")),
        good("least part", part("")),
        good("version 1.0", "{'format':'longpoint-plan','version':1.0,'unit':'mm','parts':[]}"),
        good("unknown keys", plan("'parts':[],'colour':{'deep':[1,2.50,null,true]}")),
        good(
            "all of a part",
            part(
                ",'name':'House','existing':true,'holes':[[[9,9],[9,19],[19,9]]],"
                    + "'frame':{'method':'rafter','spacing':16,'thickness':1.5,'hipSetback':72},"
                    + "'deck':{'thickness':0.5,'sheetWidth':48,'sheetLength':96,'start':'centre'}")),
        good(
            "choices of a frame",
            part(
                ",'frame':{'method':'truss','spacing':24,'thickness':1.5,'ridge':'high',"
                    + "'ceiling':'4/12','haul':120,'lookout':'edge'}")),
        good(
            "places of a frame",
            part(
                ",'frame':{'lookoutPlaces':'sheets','flats':'low','girderPlies':2,"
                    + "'layoutFrom':[[480,168]],'through':[10,10],'legs':'split',"
                    + "'placed':[{'at':[120,0]},{'at':[96,168],'to':[240,168],'kind':'girder',"
                    + "'plies':2}],'leftOut':[[72,0]],"
                    + "'ceilings':[{'from':[0,0],'to':[96,0],'slope':'4/12'}]}")),
        good(
            "choices of rafters",
            part(",'frame':{'method':'rafter','plateWidth':5.5,'post':6,'ridgeEnds':'commons'}")),
        good("hip of rafters", edge("{'kind':'eave','hip':'rafters'}")),
        good(
            "supplier's list",
            plan(
                "'parts':[],'joins':[{'upper':'a','lower':'b','tails':'on',"
                    + "'chords':[192,144.5,96]}]")),
        bad(
            "half a ply",
            "/parts/0/frame/girderPlies",
            "whole number from 1 to 9",
            part(",'frame':{'girderPlies':1.5}")),
        bad(
            "place of three figures",
            "/parts/0/frame/leftOut/0",
            "two numbers",
            part(",'frame':{'leftOut':[[1,2,3]]}")),
        bad(
            "placed nowhere",
            "/parts/0/frame/placed/0",
            "\"at\" is missing",
            part(",'frame':{'placed':[{'plies':2}]}")),
        bad(
            "other hip",
            "/parts/0/edges/2/hip",
            "Expected one of \"stepdown\", \"rafters\", \"none\"",
            edge("{'kind':'eave','hip':'hung'}")),
        bad(
            "chord in text",
            "/joins/0/chords/0",
            "Expected a number",
            plan("'parts':[],'joins':[{'upper':'a','lower':'b','chords':['192']}]")),
        good("eave", edge("{'kind':'eave','slope':'8/12','overhang':16,'heel':4.5}")),
        good("degrees", edge("{'kind':'eave','slope':'33.7deg'}")),
        good("percent", edge("{'kind':'eave','slope':'66.7%'}")),
        good("ratio", edge("{'kind':'open','slope':0.6667}")),
        good("decimal rise", edge("{'kind':'eave','slope':'8.5/12'}")),
        good("small run", edge("{'kind':'eave','slope':'1/0.5'}")),
        good("flat", edge("{'kind':'eave','slope':0}")),
        good("odd but drawable", edge("{'kind':'eave','overhang':-16,'heel':0}")),
        good("join", plan("'parts':[],'joins':[{'upper':'a','lower':'b'}]")),
        good(
            "through",
            plan(
                "'parts':[],'joins':[{'upper':'a','lower':'b','method':'through',"
                    + "'madeFor':'deck'}]")),
        good("defaults", plan("'parts':[],'defaults':{'slope':'9/12','fascia':0.75}")),
        bad("a list", "", "Expected an object { } but found a list", "[]"),
        bad("a number", "", "Expected an object", "7"),
        bad("no format", "", "not a Longpoint plan", "{'version':1,'unit':'in','parts':[]}"),
        bad(
            "other format",
            "/format",
            "not a Longpoint plan",
            "{'format':'house','version':1,'unit':'in','parts':[]}"),
        bad(
            "no version",
            "",
            "\"version\" is missing",
            "{'format':'longpoint-plan','unit':'in','parts':[]}"),
        bad(
            "newer",
            "/version",
            "newer Longpoint",
            "{'format':'longpoint-plan','version':2,'unit':'in','parts':[]}"),
        bad(
            "older than the first",
            "/version",
            "no such version",
            "{'format':'longpoint-plan','version':0,'unit':'in','parts':[]}"),
        bad(
            "version in text",
            "/version",
            "Expected a number",
            "{'format':'longpoint-plan','version':'1','unit':'in','parts':[]}"),
        bad(
            "no unit",
            "",
            "\"unit\" is missing",
            "{'format':'longpoint-plan','version':1,'parts':[]}"),
        bad(
            "feet",
            "/unit",
            "Expected one of \"in\", \"mm\" but found \"ft\"",
            "{'format':'longpoint-plan','version':1,'unit':'ft','parts':[]}"),
        bad("no parts key", "", "\"parts\" is missing", "{" + HEAD + "}"),
        bad("parts an object", "/parts", "Expected a list", plan("'parts':{}")),
        bad(
            "part null",
            "/parts/0",
            "Expected an object { } but found null",
            plan("'parts':[null]")),
        bad("title a number", "/title", "Expected text in quotes", plan("'title':7,'parts':[]")),
        bad(
            "no id",
            "/parts/0",
            "\"id\" is missing",
            plan("'parts':[{" + WALLS + ",'plateHeight':97}]")),
        bad(
            "no outline",
            "/parts/0",
            "\"outline\" is missing",
            plan("'parts':[{'id':'a','plateHeight':97}]")),
        bad(
            "no plate height",
            "/parts/0",
            "\"plateHeight\" is missing",
            plan("'parts':[{'id':'a'," + WALLS + "}]")),
        bad(
            "height in text",
            "/parts/0/plateHeight",
            "Expected a number in the plan’s unit",
            plan("'parts':[{'id':'a'," + WALLS + ",'plateHeight':'97'}]")),
        bad(
            "two corners",
            "/parts/0/outline",
            "three corners",
            plan("'parts':[{'id':'a','outline':[[0,0],[1,1]],'plateHeight':97}]")),
        bad(
            "corner of three",
            "/parts/0/outline/1",
            "two numbers",
            plan("'parts':[{'id':'a','outline':[[0,0],[1,1,1],[2,0]],'plateHeight':97}]")),
        bad(
            "corner in text",
            "/parts/0/outline/1/0",
            "Expected a number",
            plan("'parts':[{'id':'a','outline':[[0,0],['1',1],[2,0]],'plateHeight':97}]")),
        bad("hole of two", "/parts/0/holes/0", "three corners", part(",'holes':[[[1,1],[2,2]]]")),
        bad(
            "existing in text",
            "/parts/0/existing",
            "Expected true or false",
            part(",'existing':'yes'")),
        bad("kind missing", "/parts/0/edges/2", "\"kind\" is missing", edge("{'slope':'8/12'}")),
        bad(
            "kind unknown",
            "/parts/0/edges/2/kind",
            "Expected one of \"eave\", \"gable\", \"abutment\", \"open\" but found \"hip\"",
            edge("{'kind':'hip'}")),
        bad(
            "slope of words",
            "/parts/0/edges/2/slope",
            "\"steep\" is not a slope",
            edge("{'kind':'eave','slope':'steep'}")),
        bad(
            "slope bare in text",
            "/parts/0/edges/2/slope",
            "not a slope",
            edge("{'kind':'eave','slope':'8'}")),
        bad(
            "slope below zero",
            "/parts/0/edges/2/slope",
            "not below zero",
            edge("{'kind':'eave','slope':-0.5}")),
        bad(
            "slope over nothing",
            "/parts/0/edges/2/slope",
            "not a slope",
            edge("{'kind':'eave','slope':'8/0'}")),
        bad(
            "slope upright",
            "/parts/0/edges/2/slope",
            "not a slope",
            edge("{'kind':'eave','slope':'90deg'}")),
        bad(
            "slope null",
            "/parts/0/edges/2/slope",
            "Expected a slope",
            edge("{'kind':'eave','slope':null}")),
        bad(
            "heel in text",
            "/parts/0/edges/2/heel",
            "Expected a number",
            edge("{'kind':'eave','heel':'4 1/2'}")),
        bad("frame a list", "/parts/0/frame", "Expected an object", part(",'frame':[]")),
        bad(
            "frame method",
            "/parts/0/frame/method",
            "Expected one of",
            part(",'frame':{'method':'steel'}")),
        bad(
            "setback null",
            "/parts/0/frame/hipSetback",
            "found null",
            part(",'frame':{'hipSetback':null}")),
        bad("lookout", "/parts/0/frame/lookout", "\"edge\"", part(",'frame':{'lookout':'up'}")),
        bad("ridge", "/parts/0/frame/ridge", "\"high\"", part(",'frame':{'ridge':2}")),
        bad("deck start", "/parts/0/deck/start", "\"centre\"", part(",'deck':{'start':'center'}")),
        bad("joins an object", "/joins", "Expected a list", plan("'parts':[],'joins':{}")),
        bad(
            "join without lower",
            "/joins/0",
            "\"lower\" is missing",
            plan("'parts':[],'joins':[{'upper':'a'}]")),
        bad(
            "join method",
            "/joins/0/method",
            "Expected one of \"overlay\", \"through\"",
            plan("'parts':[],'joins':[{'upper':'a','lower':'b','method':'over'}]")),
        bad(
            "join made for",
            "/joins/0/madeFor",
            "Expected one of",
            plan("'parts':[],'joins':[{'upper':'a','lower':'b','madeFor':'roof'}]")),
        bad(
            "defaults a number",
            "/defaults",
            "Expected an object",
            plan("'parts':[],'defaults':1")),
        bad(
            "default slope",
            "/defaults/slope",
            "not a slope",
            plan("'parts':[],'defaults':{'slope':'8:12'}")),
        bad(
            "default overhang",
            "/defaults/overhang",
            "Expected a number",
            plan("'parts':[],'defaults':{'overhang':true}")));
  }
}
