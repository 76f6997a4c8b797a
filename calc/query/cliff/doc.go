// Package cliff answers what one wire more or fewer costs: the lay-up, the OD and the sheath of
// a branch over the number of its commonest wires, from some fewer to some more than it has, and
// the same over the number of its spares.
//
// A count is planned as the planner would propose it, one count at a time, so that a screen can
// fill while it is worked out. The OD is not bound to grow with the count: sizes that close well
// may come out thinner than fewer that do not, and Says tells so.
package cliff
