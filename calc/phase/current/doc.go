// Package current is the phase of what hangs on current: the heat of each branch in
// balance, what each wire may carry, fuses and what they let through, and pairs as lines
// for signals. It stands on the wires, the lay of the branches and their sheaths.
//
//	reads Branch: Ambient, Layers, OverMM, Sheath
//	reads Cavity: Size
//	reads Dia: Nominal
//	reads Layer: Members
//	reads Member: D, ID, Loss, X, Y
//	reads Sheath: Tube, Verdict
//	reads Sheet: Branches, Cat, H, Index, Limits, Terms, Units, Unrated, Wires
//	reads Term: State
//	reads Unit: LayMM, Loss
//	reads Wire: Dia, Entry, Finished, Heats, Known, Path
//	writes Branch: Warm
//	writes Bus: AllMM, Known, MM, StubAt, StubMM, Way, Wire
//	writes Feed: All, Back, Beyond, Device, Far, Legs, Load, Most, Near, Outputs, Short
//	writes Guard: Amps, Feed
//	writes Limit: Amps, Feed, Origin, Where
//	writes Pair: Bus, Known, Loop, Ohm, Shielded, Twist
//	writes Sheet: Feeds
//	writes Unit: Pair
//	writes Warm: Endless, FillerC, Hottest, HottestC, Key, Known, Rays, Shape, SurfaceC,
//	    UnderC, WattPerM, Wires
//	writes WarmWire: C, Layer, Limit, Wire
//	writes Wire: Bound, BoundAt, Circuit, Drop, FeedBurns, Guard, HottestC, HottestIn, Limits
package current
