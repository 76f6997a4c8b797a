// Package built compares what was built with the sheet as it is now: what each step of a run
// made when it was ticked, and what the sheet has it make. It says what has to be done again.
//
//	reads Branch: As, Layers, Sheath, Waiting
//	reads Cavity: Drain, Wires
//	reads Dia: Nominal
//	reads Layer: BuiltMM, BuiltOf, FillerMM, Fillers, Hand, LayMM, Members, OverMM
//	reads Member: ID, Kind
//	reads Sheath: Part, Tube
//	reads Sheet: Base, Branches, H, Index, Limits, Snags, Splices, Terms, Units, Wires
//	reads Snag: Level, Rule, Says, Where
//	reads Splice: Part, Wires
//	reads Term: Cavities, State
//	reads Unit: Dia, LayMM
//	reads Wire: Cut, Finished, Path
package built
