/**
 * What the user drew: parts with wall outlines, the kind and slope of every side, and how parts
 * join. Records only; an edit returns a new plan. {@link longpoint.plan.PlanCheck} says in words
 * what is wrong with a plan; a plan that fails it is still a plan.
 */
package longpoint.plan;
