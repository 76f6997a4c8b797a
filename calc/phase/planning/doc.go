// Package planning proposes how a branch could be laid. It runs beside the screen, never
// on the way from a key to the screen: Build takes over what Adopt has put into the sheet.
// It stands on the components of a branch and on their diameters.
//
//	reads Branch: Components, Make
//	reads Dia: Nominal
//	reads Sheet: Branches, H, Index, Limits, Wires
//	reads SparePlace: CappedAt, From, Like, Path, To
//	reads Wire: Dia
//	writes Option: Buried, Cost, Layers, Parted, Plan, SpareIn, Spares
//	writes Proposal: LeaversFree, LeaversMM, LeaversWith, Options, Plain, Reach, Shown,
//	    UnitsFree, UnitsMM, UnitsWith
//	writes Reach: Ended, Least, Proven, Thinnest
//	writes Sheet: Proposals
package planning
