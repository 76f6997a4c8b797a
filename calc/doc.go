// Package calc derives everything on the build sheet from a harness and a
// catalogue: one pure function, Build, whose order is the order of the sheet.
//
// Nothing here reads a clock, a file or the environment; nothing panics, and no
// result is NaN. What cannot be computed is marked as not known and, where a
// person must act, said as a snag.
//
//	reads Branch: Waiting
//	reads Sheet: Branches, Reuse
//	writes Reuse: All, Branches, Ids, Places, Planned, Prior, Wires
//	writes Sheet: Base, Cat, H, Index, LaidBy, Limits, Proposals
package calc
