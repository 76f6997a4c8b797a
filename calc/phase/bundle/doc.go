// Package bundle is the phase in which each branch is laid: what runs in it, its layers and
// where each component lies in them, its diameters, what it can be bent to. It stands on
// the wires, on the ends (a spare needs a free cavity) and on proposals for branches that
// the file does not lay.
//
//	reads Branch: Bend
//	reads Dia: Origin
//	reads Option: Layers, Plan
//	reads Reuse: All, Branches, Planned, Prior
//	reads Sheet: Base, Cat, H, Index, Limits, Proposals, Reuse, Snags, Terms, Units, Wires
//	reads Term: Cavities, Free
//	reads Unit: HasPath, Path
//	reads Wire: Dia, Entry, HasPath, Known, Path
//	writes Bend: MinMM, MismatchMM, Rule
//	writes Branch: Ambient, As, Buried, Components, Key, LaidMM, Layers, Learned, Make,
//	    OverMM, OverMaxMM, OverMinMM, PlanKey, Predicted, Proposed, Rank, Said, Standing,
//	    TapeMM, TapeMinMM, Waiting
//	writes Layer: BedMM, BentMM, Beside, BuiltMM, BuiltOf, Closes, FillerMM, Fillers, FlatMM,
//	    Gap, Hand, LayDeg, LayMM, Lift, Loss, Members, OverMM, ProudMM, Room, Spares, Takes,
//	    TapeMM, Tracer, Turns, ZigZag
//	writes Learned: Correction, PredictedMM
//	writes Member: D, ID, Kind, Leaves, Loss, X, Y
//	writes Predicted: Least, Most, Over, Tape, TapeLeast
//	writes Sheet: Branches
package bundle
