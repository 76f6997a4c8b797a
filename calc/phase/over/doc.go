// Package over is the phase of what goes over a bundle: tapes, braids, sheaths, sleeves,
// boots, transitions, and what they must pass and grip. It stands on the diameters of the
// branches, on splices and on terminations.
//
//	reads Bend: MinMM
//	reads Branch: Ambient, Bend, Components, Layers, Make, OverMM, OverMaxMM, OverMinMM,
//	    TapeMM, TapeMinMM
//	reads Cavity: Wires
//	reads Dia: Nominal, Origin
//	reads Layer: FillerMM, Fillers, Hand, Members
//	reads Member: D, ID
//	reads Reuse: All, Branches
//	reads Sheet: Branches, Cat, H, Index, Limits, Reuse, Snags, Splices, Terms, Units, Wires
//	reads Splice: Part
//	reads Term: Cavities, State
//	reads Unit: Dia
//	reads Wire: Dia, Entry, Path
//	writes Branch: Covers, Outlets, SaidOver, Sheath
//	writes Choice: CutMM, Gram, Level, Tube, Verdict
//	writes Covered: CutMM, Ends, FromMM, Gram, Index, OverMM, Part, PassAt, PassMM,
//	    ThickGuess, ThickMM, ToMM, Tube, Under, UnderMM, UnderOverMost, UnderTapeMin, Verdict,
//	    What
//	writes Passing: AddMM, BulgeMM, Ends, Lumped, Over, Pass, StationMM
//	writes Sheath: BeneathMM, BeneathMinMM, CutMM, FromMM, Gram, KindAll, Others, Part, Pass,
//	    PassAt, PassMM, PassStationMM, Proposed, ToMM, Tube, Verdict
package over
