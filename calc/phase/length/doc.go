// Package length is the phase of finished and cut lengths, of voltage drop along them, and
// of mass. It stands on the lay of each branch and on the ways of the wires.
//
//	reads Branch: Components, LaidMM, Layers
//	reads Dia: Nominal
//	reads Layer: Fillers, Members
//	reads Member: D, ID, Kind, Loss
//	reads Reuse: Prior
//	reads Sheet: Branches, H, Index, Limits, Reuse, Totals, Units, Wires
//	reads Unit: BareMM, Dia, Loss
//	reads Wire: GramPerM, HasPath, Path
//	writes Branch: Gram
//	writes Totals: Fillers, Gram, Spares, Units, WireMM, Wires
//	writes Wire: Cut, Finished
package length
