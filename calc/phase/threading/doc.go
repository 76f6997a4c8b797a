// Package threading is the last phase: the order in which everything is threaded on, where
// adhesive is spread, and how near each part comes to its temperature. It writes nothing
// into the sheet but open points; its lists are worked out when they are asked for.
//
//	reads Branch: Ambient, Covers, OverMM, Sheath, Warm
//	reads Covered: CutMM, Ends, FromMM, Part, PassAt, PassMM, ToMM, Tube, Under, What
//	reads Passing: Ends
//	reads Sheath: CutMM, FromMM, Part, Pass, PassAt, PassMM, ToMM, Tube
//	reads Sheet: Branches, Cat, H, Index, Limits, Wires
//	reads Warm: FillerC, Known, UnderC, Wires
//	reads WarmWire: C, Wire
//	reads Wire: Entry, Heats
package threading
