// Package wires is the first phase. It finds what each wire and unit is (diameter, mass,
// catalogue entry), which branches it runs through, and what current it carries as heat
// sees it. It reads the harness and the catalogue. Its tests of pulses, of measured drops
// and of the order of the tree run later, on what the later phases found.
//
//	reads Branch: Ambient
//	reads Reuse: Prior
//	reads Sheet: Base, Branches, Cat, H, Index, Limits, Reuse, Terms
//	reads Term: Cavities, Used
//	reads Wire: Drop, HottestC
//	writes Sheet: Back, Units, Unrated, Wires
//	writes Unit: BareMM, Dia, HasPath, LayMM, Loss, Path
//	writes Wire: Dia, Entry, GramPerM, HasPath, Heats, Known, Path, PulseBurns
package wires
