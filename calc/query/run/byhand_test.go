package run_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
)

// lamps is a box with a lamp on two wires through a splice, a wire between two lamps and one that leads to nothing; the lamp is on a fuse.
const lamps = `format = 1
[harness]
supply_v = 13.8
[[termination]]
id = "BOX"
cavities = ["1", "2", "3"]
[[termination]]
id = "L"
cavities = ["1", "2"]
[[termination]]
id = "M"
cavities = ["1"]
[[breakout]]
id = "J"
[[splice]]
id = "S"
at = "J"
[[wire]]
id = "a"
from = "BOX:1"
to = "S"
spec = "AS22759/32"
size = "20"
amps = 2.0
role = "power"
[[wire]]
id = "b"
from = "S"
to = "L:1"
spec = "AS22759/32"
size = "20"
amps = 2.0
role = "power"
[[wire]]
id = "c"
from = "L:2"
to = "M:1"
spec = "AS22759/32"
size = "20"
[[wire]]
id = "d"
from = "BOX:3"
spec = "AS22759/32"
size = "20"
role = "spare"
capped_at = "J"
[[feed]]
id = "F"
device = "blade"
amps = 5.0
wires = ["a"]
[[branch]]
id = "T"
from = "BOX"
to = "J"
length_mm = 1000.0
make = "straight"
[[branch]]
id = "TL"
from = "J"
to = "L"
length_mm = 200.0
make = "straight"
[[branch]]
id = "TM"
from = "J"
to = "M"
length_mm = 200.0
make = "straight"
`

// The tests of a loom by hand: each net from its first end, an end that leads to nothing rings to nothing; insulation once for each end
// where a net begins; the drop of the feed over both its wires.
func TestTestsByHand(t *testing.T) {
	s := calctest.Built(t, lamps)
	say := func(all []run.Check) string {
		var out []string
		for _, c := range all {
			out = append(out, strings.TrimSpace(fmt.Sprintf("%d %s|%s>%s %s", c.Kind, c.Name, c.From, c.To, strings.Join(c.Via, "+"))))
		}
		return strings.Join(out, "; ")
	}
	rings := fmt.Sprintf("%d BOX:1 L:1|BOX:1>L:1 a+b; %d BOX:3|BOX:3>; %d L:2 M:1|L:2>M:1 c", run.Rings, run.Silent, run.Rings)
	bare := run.Tests(s, run.RunStep{Key: run.HoldBare})
	if got := say(bare); got != rings {
		t.Errorf("%s\nwant %s", got, rings)
	}
	pinned := run.Tests(s, run.RunStep{Key: run.HoldPinned})
	if got, want := say(pinned), rings+fmt.Sprintf("; %d isolation BOX|BOX>; %d isolation L|L>", run.Isolated, run.Isolated); got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	if last := pinned[len(pinned)-1]; last.Limit != 100 || last.Expect != 0 { // megohm
		t.Errorf("%+v", last)
	}
	// Each wire of 20 AWG has 32.41 mohm/m; what is cut off at its ends is no part of it.
	mm := float64(s.Wires[0].Finished + s.Wires[1].Finished)
	if ohm := 32.41e-6 * mm; math.Abs(bare[0].Expect-ohm) > 1e-9 || bare[0].Limit != math.Ceil((ohm+0.4)*10-1e-9)/10 {
		t.Errorf("%+v, by hand %v", bare[0], ohm)
	}
	loaded := run.Tests(s, run.RunStep{Key: run.HoldLoaded})
	if got, want := say(loaded), fmt.Sprintf("%d F|BOX:1>L:1 a+b", run.Drops); got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	if v := float64(s.Wires[0].Drop.V + s.Wires[1].Drop.V); math.Abs(loaded[0].Expect-v) > 1e-12 || loaded[0].Limit <= 0 {
		t.Errorf("%+v, by the wires %v", loaded[0], v)
	}
	// As pieces each has its name as key, and the first wire on its way.
	var pieces []string
	for _, p := range run.Pieces(s, run.RunStep{Key: run.HoldPinned, Kind: run.HoldStep}) {
		pieces = append(pieces, strings.TrimSpace(p.Key+" "+p.ID))
	}
	for k, want := range []string{"BOX:1 L:1 a", "BOX:3", "L:2 M:1 c", "isolation BOX", "isolation L"} {
		if !slices.Contains(pieces, want) {
			t.Errorf("%d: no %q among %q", k, want, pieces)
		}
	}
}

// A layer of equal wires is as thick as they are, in proportion: a reading of twice what the sheet has is of wires twice as thick, and
// one of half of it of wires half as thick.
func TestReadingFarOff(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", "")
	for _, by := range []unit.Millimetre{20, 2, 1.5, 0.7, 0.5, 0.01} {
		told := run.TooThick
		if by < 1 {
			told = run.TooThin
		}
		e, ok := run.ExplainReading(s, nil, 0, 1, []unit.Millimetre{by * s.Branches[0].Layers[1].OverMM})
		if !ok || e.Told != told || math.Abs(float64(e.AsIfMM/(1.09*by))-1) > 1e-3 || e.Top != (by > 1) || e.Bottom != (by < 1) ||
			e.NextHolds != 12 ||
			math.Abs(float64(e.OverMM/(by*s.Branches[0].OverMM))-1) > 1e-3 {
			t.Errorf("%v times: %+v", by, e)
		}
	}
}

// The wall that a diameter over a tube comes to, by hand: of a tube of bore 4.8 over a bundle of d with a wall of 0.6 it is
// √(d² + 4·0.6·5.4); a diameter that is no more than the bundle is no wall, and the wall of a part that was measured is what is predicted.
func TestWallByHand(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	d, bore := float64(s.Branches[0].OverMM), float64(s.Branches[0].Sheath.Tube.V.RecoveredMM)
	for _, c := range []struct{ over, want float64 }{{math.Sqrt(d*d + 4*0.6*(bore+0.6)), 0.6}, {d, 0}, {d - 1, 0}, {0.1, 0}} {
		h := s.H.EditBuild("1", func(b *model.Build) { b.Tubes = []model.Recovered{{Branch: "T", OverMM: unit.Millimetre(c.over)}} })
		for _, own := range []bool{false, true} {
			want := float64(s.Branches[0].Sheath.Tube.V.WallMM)
			if own {
				n := *h
				n.Parts = []model.Part{{ID: "other", WallMM: model.Some[unit.Millimetre](0.2)}, {ID: "AS23053/16 9.5",
					WallMM: model.Some[unit.Millimetre](0.9)}}
				h, want = &n, 0.9
			}
			all := run.Measured(calc.Build(h, s.Base, nil), "loom")
			if len(all) != 1 || math.Abs(all[0].Measured-c.want) > 1e-9 || math.Abs(all[0].Predicted-want) > 1e-9 ||
				all[0].Group != "wall, AS23053/16" ||
				all[0].Of != "loom serial 1 T" {
				t.Errorf("%v: %+v, want %v of %v", c.over, all, c.want, want)
			}
		}
	}
}
