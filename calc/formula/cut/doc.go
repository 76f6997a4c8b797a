// Package cut says how long to cut a wire and how long it ends up.
//
// Words. A piece is the wire's way through one branch. Where the branch is laid,
// the wire is longer than the branch by its lay loss; in the zone at a breakout,
// and for one diameter before it, wires run straight and the loss is 1. A loop
// is service length that stays in the boot; a tail is cut off after pinning. The
// finished length has the loops and not the tails, the cut length has both and
// is rounded up to what a person measures.
//
// The wires of a unit are longer by the unit's own loss as well, everywhere: a
// unit keeps its twist through zones.
//
// What it does not do: it finds no path and no loss, and does not know which end
// of a wire is pinned first. Impossible figures get false beside a zero; nothing
// here returns NaN or an infinity.
package cut
