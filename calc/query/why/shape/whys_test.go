package shape

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"contralay/calc/formula/cover"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// known is what each figure is that others are made from, whatever makes it: so each maker is asked alone.
var known = map[string]float64{"branch.over": 6, "branch.tape": 5, "branch.least": 5.5, "branch.most": 6.5, "branch.tapeleast": 4.5,
	"branch.laid": 250, "branch.mass": 12, "sheath.pass": 7, "sheath.passmost": 7.5, "sheath.from": 30, "sheath.to": 130, "tube.over": 6.8,
	"tube.cut": 150, "layer.tape": 3, "layer.stand": 3.4, "layer.over": 3.2, "layer.lay": 40, "layer.room": 2, "layer.filler": 1.1,
	"component.over": 1.2, "component.loss": 1.1, "component.run": 300, "wire.finished": 900, "wire.cut": 950}

// asked explains the figures of a sheet from those.
func asked(s *sheet.Sheet) why.Explainer {
	made := map[string]why.Maker{}
	for name, v := range known {
		made[name] = func(why.Explainer, why.Figure) (why.Why, bool) { return why.Why{Value: v, Formula: why.First}, true }
	}
	s.Index = model.NewIndex(s.H)
	return why.New(s, made)
}

// sheathed is a branch T of 400 mm with a layer round one wire, a sheath X, a braid and a sleeve.
func sheathed() *sheet.Sheet {
	some := model.Some[unit.Millimetre]
	tube := catalogue.Tube{ID: "X", SuppliedMM: 10, RecoveredMM: 4, WallMM: 0.5, LengthChange: 0.1, Density: 1.5}
	tube.Origin = catalogue.Origin{Source: "own", Standing: catalogue.Published}
	verdict := cover.Verdict{SlideMM: 2.5, WorstSlideMM: 2.1, RoomMM: 0.31, GripRatio: 1.3, StretchRatio: 0.61, Wraps: true, OverMM: 6.7,
		WallMM: 0.35}
	at := func(id string, x, y, d unit.Millimetre) sheet.Member {
		return sheet.Member{ID: id, X: x, Y: y, D: d, Loss: 1.1}
	}
	h := &model.Harness{Wires: []model.Wire{{ID: "a", Spec: "own", Size: "22"}, {ID: "b", Spec: "own", Size: "22"}, {ID: "c", Spec: "own",
		Size: "20"}},
		Branches: []model.Branch{{ID: "T", From: "P", To: "Q", LengthMM: 400, BendMM: some(17), BendDeg: model.Some[unit.Degree](90),
			Covers: []model.Cover{{What: model.CoverBraid, ThickMM: some(0.25)}, {What: model.CoverSleeve}, {What: model.CoverTape}}}}}
	s := &sheet.Sheet{H: h, Wires: make([]sheet.Wire, 3), Branches: []sheet.Branch{{OverMM: 6, OverMinMM: 5.4, OverMaxMM: 6.5, TapeMM: 5,
		TapeMinMM: 4.5, LaidMM: 250, Make: model.MakeLaid, Standing: catalogue.House, As: []model.Layer{{}, {BindMM: some(0.3)}},
		Layers: []sheet.Layer{{OverMM: 1.3, TapeMM: 1.2, Members: []sheet.Member{at("a", 0, 0, 1.3)}},
			{OverMM: 6, TapeMM: 5, BedMM: 1.2, ProudMM: 0.1, LayMM: 40, Closes: true, Turns: 6.2, Gap: 0.2, FlatMM: 5, BentMM: 3, Room: 2,
				Takes:   5,
				Members: []sheet.Member{at("b", 3, 4, 1.1), at("c", -1, 0, 1.4), at("b", 0, 2, 1.0)}}},
		Sheath: sheet.Sheath{Others: []sheet.Choice{{Tube: catalogue.Tube{ID: "W"}}, {Tube: tube, Verdict: verdict, CutMM: 120, Gram: 2}},
			PassAt: "over the bundle", ToMM: 400, Pass: sheet.Passing{Pass: cover.Pass{NominalMM: 6}}},
		Covers: []sheet.Covered{{Index: 0, What: model.CoverBraid, UnderMM: 6, OverMM: 6.5, ThickMM: 0.25},
			{Index: 2, What: model.CoverTape, UnderMM: 6.5, OverMM: 6.7, ThickMM: 0.1},
			{Index: 1, What: model.CoverSleeve, UnderMM: 6.5, OverMM: 7.1, PassMM: 7, Tube: model.Some(tube), UnderTapeMin: 5.1,
				FromMM: 50, ToMM: 150, CutMM: 120, Verdict: verdict}}}}}
	s.Limits.CutStepMM, s.Limits.LayRatio, s.Limits.ZoneLump = 10, 12, 1.25
	return s
}

// Each figure of a branch by hand: its value is that of the sheet, its inputs are those named, and its formula of them comes to what
// stands last.
func TestEachFigureFromItsInputs(t *testing.T) {
	measured := func(layers int, make model.Make) func(b *sheet.Branch, s *sheet.Sheet) {
		return func(b *sheet.Branch, s *sheet.Sheet) { // three small ones round a find room beside one another
			s.Wires[0].Dia = sheet.Dia{Nominal: 1.3, Min: 1.2, Max: 1.4}
			s.Wires[1].Dia = sheet.Dia{Nominal: 0.9, Min: 0.8, Max: 1}
			s.Wires[2].Dia = sheet.Dia{Nominal: 1.1, Min: 1.05, Max: 1.25}
			b.Layers, b.Make = b.Layers[:layers], make
		}
	}
	for _, c := range []struct {
		what   string // figure, layer or cover, part
		change func(b *sheet.Branch, s *sheet.Sheet)
		value  float64
		in     string // of name and value
		made   float64
	}{
		{"tube.slide 0 X", nil, 2.5, "supplied bore 10, it must pass 7", 3},
		{"tube.worst 0 X", nil, 2.1, "supplied bore 10, it must pass 7.5", 2.5},
		{"tube.room 0 X", nil, 0.31, "start 30, stop 130", 0.3},
		{"tube.grip 0 X", nil, 1.3, "tape diameter 5, recovered bore 4", 1.25},
		{"tube.grip 0 X", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.BeneathMM, b.Sheath.BeneathMinMM = 2, 1 }, 1.3,
			"tape diameter with the covers beneath the sheath 6, recovered bore 4", 1.5},
		{"tube.full 0 X", nil, 0.61, "OD 6, supplied bore 10", 0.6},
		{"tube.full 0 X", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.BeneathMM = 2 }, 0.61,
			"OD with the covers beneath the sheath 8, supplied bore 10", 0.8},
		{"tube.over 0 X", nil, 6.7, "OD 6, recovered bore 4, recovered wall 0.5", math.Sqrt(36 + 4*0.5*4.5)},
		{"tube.wall 0 X", nil, 0.35, "OD over the sheath 6.8, OD 6", 0.4},
		{"tube.cut 0 X", nil, 120, "start 30, stop 130, it may shorten by 0.1, step 10", 120}, // 111.1
		{"tube.mass 0 X", nil, 2, "recovered wall 0.5, recovered bore 4, density, g/cm3 1.5, cut length 150",
			math.Pi * 0.5 * 4.5 * 1.5 * 0.150},
		{"tube.over 0 W", nil, 0, "none", 0}, {"tube.wall 0 W", nil, 0, "none", 0}, {"tube.cut 0 W", nil, 0, "none", 0},
		{"tube.mass 0 W", nil, 0, "none", 0}, {"tube.slide 0 V", nil, 0, "none", 0}, {"tube.room 0 V", nil, 0, "none", 0},
		{"tube.grip 0 V", nil, 0, "none", 0}, {"tube.full 0 V", nil, 0, "none", 0}, {"tube.over 0 V", nil, 0, "none", 0},
		{"tube.wall 0 V", nil, 0, "none", 0}, {"tube.cut 0 V", nil, 0, "none", 0}, {"tube.mass 0 V", nil, 0, "none", 0},

		{"sheath.pass 0", nil, 6, "OD of the bundle 6", 6},
		{"sheath.pass 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.Pass.NominalMM = 5 }, 6, "OD of the bundle 6", 6},
		{"sheath.pass 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.Pass.NominalMM = 7.2 }, 7.2,
			"OD of the bundle 6, sticks out by 1.2", 7.2},
		{"sheath.pass 0", func(b *sheet.Branch, _ *sheet.Sheet) {
			b.Sheath.Pass = sheet.Passing{Pass: cover.Pass{NominalMM: 8}, AddMM: 1}
		}, 8,
			"OD of the bundle with the covers beneath the sheath 7, sticks out by 1", 8},
		{"sheath.pass 0", func(b *sheet.Branch, _ *sheet.Sheet) {
			b.Sheath.Pass = sheet.Passing{Pass: cover.Pass{NominalMM: 7.5}, Lumped: true}
		}, 7.5,
			"OD of the bundle 6, factor for the thicker zone 1.25", 7.5},
		{"sheath.passmost 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.Pass.MaxMM = 8 }, 8,
			"OD of the bundle 6.5, sticks out by 1.5", 8},
		{"sheath.passmost 0", nil, 6.5, "OD of the bundle 6.5", 6.5},
		{"sheath.passmost 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.Pass.NominalMM = 7 }, 7,
			"OD of the bundle 6.5, sticks out by 0.5", 7},
		{"sheath.pass 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.Others = nil }, 0, "none", 0},
		{"sheath.to 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Sheath.ToMM = 0 }, 0, "none", 0},
		// Each end by its own key, of a sheath that is shorter than a millimetre as well.
		{"sheath.to 0", func(b *sheet.Branch, s *sheet.Sheet) {
			s.H.Branches[0].Covers[1], b.Sheath.ToMM = model.Cover{What: model.CoverSheath, ToMM: model.Some[unit.Millimetre](0.9)}, 0.9
		}, 0.9, "stop 0.9", 0.9},
		{"sheath.from 0", func(b *sheet.Branch, s *sheet.Sheet) {
			s.H.Branches[0].Covers[1] = model.Cover{What: model.CoverSheath, FromMM: model.Some[unit.Millimetre](20)}
			b.Sheath.FromMM = 20
		}, 20, "start 20", 20},

		{"cover.over 0", nil, 6.5, "OD of what it lies on 6, thickness 0.25", 6.5},
		{"cover.over 2", nil, 6.7, "OD of what it lies on 6.5, thickness 0.1", 6.7},
		{"cover.over 1", nil, 7.1, "OD of what it lies on 6.5, recovered bore 4, recovered wall 0.5", math.Sqrt(6.5*6.5 + 9)},
		{"cover.over 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Covers[2].Verdict.Wraps = false }, 7.1,
			"OD of what it lies on 6.5, thickness 0", 6.5},
		{"cover.slide 1", nil, 2.5, "supplied bore 10, it must pass 7", 3},
		{"cover.slide 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Covers[2].PassMM = 6 }, 2.5, "supplied bore 10, it must pass 6.5", 3.5},
		{"cover.least 1", nil, 5.1, "tape diameter at its smallest 4.5, covers beneath add 0.6", 5.1},
		{"cover.grip 1", nil, 1.3, "tape diameter of what it lies on 5.2, recovered bore 4", 1.3},
		{"cover.cut 1", nil, 120, "from 50, to 150, it may shorten by 0.1, step 10", 120},
		{"cover.cut 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Covers[2].CutMM = 0 }, 0, "none", 0},
		{"cover.slide 0", nil, 0, "none", 0}, {"cover.least 0", nil, 0, "none", 0}, {"cover.grip 2", nil, 0, "none", 0},
		{"cover.cut 0", nil, 0, "none", 0}, {"cover.over 3", nil, 0, "none", 0},

		{"layer.over 1", nil, 6, "inside diameter 3.4, OD of the layer below 3.2, thickest piece, c 1.2, binder 0.3", 6.1},
		{"layer.over 0", nil, 1.3, "a 1.2, binder 0", 1.2},
		{"layer.over 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[0].BuiltMM = 0.5 }, 1.3, "a 1.2, tape that builds it up 0.5",
			1.7},
		{"layer.over 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Make = model.MakeTwisted }, 6,
			"b, distance from the axis 5, its diameter 1.2, binder 0.3", 11.5},
		{"layer.stand 0", nil, 0, "none", 0}, {"layer.proud 0", nil, 0, "none", 0}, {"layer.gap 0", nil, 0, "none", 0},
		{"layer.room 0", nil, 0, "none", 0}, {"layer.takes 0", nil, 0, "none", 0}, {"layer.over 2", nil, 0, "none", 0}, {"layer.over -1",
			nil, 0, "none", 0},
		{"layer.tape 2", nil, 0, "none", 0},
		{"layer.stand 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Make = model.MakeTwisted }, 0, "none", 0},
		{"layer.proud 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Make = model.MakeTwisted }, 0, "none", 0},
		{"layer.room 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Make = model.MakeTwisted }, 0, "none", 0},
		{"layer.takes 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Make = model.MakeTwisted }, 0, "none", 0},
		{"layer.stand 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Closes = false }, 0, "none", 0},
		{"layer.proud 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Closes = false }, 0, "none", 0},
		{"layer.gap 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Closes = false }, 0, "none", 0},
		{"layer.gap 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Members = b.Layers[1].Members[:2] }, 0, "none", 0},
		{"layer.proud 1", nil, 0.1, "inside diameter 3.4, tape diameter below 3", 0.2},
		{"layer.turns 1", nil, 6.2, "laid length 250, lay length 40", 6.25},
		{"layer.turns 0", nil, 0, "none", 0}, {"layer.lay 0", nil, 0, "none", 0},
		{"layer.lay 1", nil, 40, "lay ratio 12, OD of layer 1 6", 72},
		{"layer.lay 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.As[1].LayMM = model.Some[unit.Millimetre](41) }, 40, "lay length 41", 41},
		{"layer.lay 1", func(b *sheet.Branch, _ *sheet.Sheet) {
			b.As[1].LayMM, b.Layers[1].LayMM = model.Some[unit.Millimetre](0.9), 0.9
		},
			0.9, "lay length 0.9", 0.9},
		{"layer.turns 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].LayMM = 0.9 }, 6.2, "laid length 250, lay length 40", 6.25},
		// The tape goes round what lies beneath, 8 mm, where no piece reaches beyond it; of a twisted layer nothing lies beneath.
		{"layer.tape 1", func(b *sheet.Branch, _ *sheet.Sheet) {
			b.Layers[0].TapeMM, b.Layers[1].Members = 8, b.Layers[1].Members[1:2]
		}, 5, "binder 0.3, diameter beneath it 8, c, distance from the axis 1, its diameter 1.4", 8.3},
		{"layer.tape 1", func(b *sheet.Branch, _ *sheet.Sheet) {
			b.Make, b.Layers[1].Members = model.MakeTwisted, []sheet.Member{{ID: "c", D: 1.4}}
		}, 5, "binder 0.3, diameter beneath it 0, c, distance from the axis 0, its diameter 1.4", 1.7},
		{"layer.takes 1", nil, 5, "pieces it holds 3, room 2", 5},
		{"layer.takes 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Takes = 3 }, 3, "pieces it holds 3, room 2", 5},
		{"layer.takes 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Takes = 2 }, 2, "pieces it holds 3, too many 1", 2},
		{"layer.flat 1", nil, 5, "b, distance from the axis 5, bend, degrees 90", 5 * math.Pi},
		{"layer.flat 0", nil, 0, "none", 0},
		// The furthest piece counts however near it is: half a millimetre off, or at the axis.
		{"layer.flat 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Members = []sheet.Member{{ID: "c", X: 0.3, Y: 0.4}} }, 5,
			"c, distance from the axis 0.5, bend, degrees 90", 0.5 * math.Pi},
		{"layer.flat 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Members = []sheet.Member{{ID: "c"}} }, 5,
			"c, distance from the axis 0, bend, degrees 90", 0},
		{"layer.bent 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].LayMM = 0 }, 0, "none", 0},
		{"layer.bent 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].LayMM, b.Layers[1].FlatMM = 0.9, 0.9 }, 3,
			"b, distance from the axis 5, bend, degrees 90, inside bend radius 17, OD 6, lay length 40",
			10.0 / 20 / math.Hypot(1, 10*math.Pi/40) * 40 / math.Pi * math.Sin(math.Pi*10*math.Pi/40)},
		{"layer.flat 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].LayMM, b.Layers[1].FlatMM = 0, 0.9 }, 0.9,
			"b, distance from the axis 5, bend, degrees 90", 5 * math.Pi},
		{"layer.flat 1", func(_ *sheet.Branch, s *sheet.Sheet) { s.H.Branches[0].BendMM.Set = false }, 0, "none", 0},
		{"layer.flat 1", func(_ *sheet.Branch, s *sheet.Sheet) { s.H.Branches[0].BendDeg.Set = false }, 0, "none", 0},
		// The arc on the axis is 20·π/2 = 31.4; of a lay of 40 the sine is that of 0.785π.
		{"layer.bent 1", nil, 3, "b, distance from the axis 5, bend, degrees 90, inside bend radius 17, OD 6, lay length 40",
			10.0 / 20 / math.Hypot(1, 10*math.Pi/40) * 40 / math.Pi * math.Sin(math.Pi*10*math.Pi/40)},
		{"layer.filler 1", nil, 0, "none", 0},
		{"layer.filler 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Fillers, b.Layers[1].FillerMM = 2, 1.05 }, 0, "none", 0},
		{"layer.filler 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].FillerMM = 1.1 }, 0, "none", 0},
		{"layer.filler 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Fillers = 1 }, 0, "none", 0},
		{"layer.filler 1", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Fillers, b.Layers[1].FillerMM = 1, 1.4 }, 1.4, "c 1.2", 1.2},
		{"layer.filler 1", func(b *sheet.Branch, _ *sheet.Sheet) {
			b.Layers[1].Fillers, b.Layers[1].FillerMM, b.As[1].FillerMM = 1, 1.4, model.Some[unit.Millimetre](1.5)
		}, 1.4, "filler 1.5", 1.5},
		{"layer.filler 0", func(b *sheet.Branch, _ *sheet.Sheet) { // 0.7013 of the five round it: 1 ÷ sin 36° − 1
			l := &b.Layers[0]
			l.Fillers, l.FillerMM, l.Members = 1, 0.91, append(b.Layers[1].Members, b.Layers[1].Members...)
		}, 0.91, "b 1.2, factor of a rod among five 0.7013", 1.2 * (1/math.Sin(math.Pi/5) - 1)},

		{"branch.over 0", nil, 6, "OD of layer 1 3.2", 3.2}, {"branch.tape 0", nil, 5, "tape diameter of layer 1 3", 3},
		{"branch.length 0", nil, 400, "length 400", 400}, {"branch.room 0", nil, 2, "layer 1 2", 2},
		{"branch.room 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers = b.Layers[:1] }, 0, "none", 0},
		{"branch.over 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers = nil }, 0, "none", 0},
		{"branch.tape 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers = nil }, 0, "none", 0},
		{"branch.floor 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers = nil }, 0, "none", 0},
		{"branch.floor 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers[1].Members[2].D = 1.4 }, math.Sqrt(6.82), // thin to thick
			"pieces of 1.10 mm 1, their diameter 1.1, pieces of 1.30 mm 1, their diameter 1.3, pieces of 1.40 mm 2, their diameter 1.4",
			math.Sqrt(6.82)},
		// Wires that are cut count, one that is shorter than a millimetre as well.
		{"branch.wire 0", func(_ *sheet.Branch, s *sheet.Sheet) {
			for k, cut := range []unit.Millimetre{0.9, 0, 500} {
				s.Wires[k].Cut, s.Wires[k].Path = cut, []int{0}
			}
		}, 500.9, "a 950, c 950", 1900},
		{"branch.least 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers = nil }, 0, "none", 0},
		{"branch.laid 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Layers = nil }, 0, "none", 0},
		// One layer is a group; of two the outer one lies on the inner one, each wire as its band has it.
		{"branch.least 0", measured(1, model.MakeLaid), 5.4, "OD of the group 1.2, binder 0", 1.2},
		{"branch.most 0", measured(1, model.MakeLaid), 6.5, "OD of the group 1.4, binder 0", 1.4},
		{"branch.least 0", measured(2, model.MakeLaid), 5.4, "inside diameter 1.2, thickest piece 1.05, binder 0.3", 3.6},
		{"branch.most 0", measured(2, model.MakeLaid), 6.5, "inside diameter 1.4, thickest piece 1.25, binder 0.3", 4.2},
		{"branch.tapeleast 0", measured(1, model.MakeLaid), 4.5, "tape diameter at that size 1.2", 1.2},
		{"branch.least 0", measured(1, model.MakeTwisted), 5.4, "OD of the group 1.2, binder 0", 1.2},
		{"branch.bend 0", nil, 0, "none", 0},
		{"branch.bend 0", func(b *sheet.Branch, _ *sheet.Sheet) { b.Bend.MinMM = 36 }, 36,
			"thickest piece, c 1.2, factor on the thickest piece 10, OD 6, factor on the OD 6", 36},
		{"component.loss 0 b", nil, 1.1, "distance from the axis 5, lay length 40", math.Hypot(1, 10*math.Pi/40)},
		{"component.loss 0 a", nil, 1.1, "straight 1", 1}, {"component.loss 0 no", nil, 0, "none", 0},
		{"component.run 0 b", nil, 250*1.1 + 150, "laid length 250, lay loss 1.1, length of T 400", 250*1.1 + 150},
		{"component.run 0 b", func(b *sheet.Branch, _ *sheet.Sheet) { b.LaidMM = 500 }, 440,
			"laid length 250, lay loss 1.1, length of T 400", 425},
		{"component.run 0 no", nil, 0, "none", 0},
	} {
		s := sheathed()
		if c.change != nil {
			c.change(&s.Branches[0], s)
		}
		e := asked(s)
		f := why.Figure{Of: "T"}
		fmt.Sscan(c.what, &f.What, &f.K, &f.Part)
		w, ok := Makers[f.What](e, f)
		if !ok || c.in == "none" {
			if ok || c.in != "none" || w.Formula != nil || w.Name != "" {
				t.Errorf("%s: %v %+v, want %s", c.what, ok, w, c.in)
			}
			continue
		}
		var in []string
		for _, x := range w.In {
			in = append(in, fmt.Sprintf("%s %.4g", x.Name, x.Value))
		}
		got := strings.Join(in, ", ")
		if math.Abs(w.Value-c.value) > 1e-9 || got != c.in || math.Abs(w.Made()-c.made) > 1e-4*c.made || w.Says == "" ||
			!strings.Contains(w.Name, "T") && !strings.Contains(w.Name, "X") {
			t.Errorf("%s: %s is %v from %s, made %v; want %v from %s, %v: %s", c.what, w.Name, w.Value, got, w.Made(), c.value, c.in,
				c.made, w.Says)
		}
		for _, x := range w.In {
			if x.From == nil && (x.Source == "" || !x.Standing.Known()) {
				t.Errorf("%s: %+v says too little", c.what, x)
			}
		}
	}
}

// Formulas of figures at their edges, by hand.
func TestFormulasAtTheirEdges(t *testing.T) {
	s := sheathed()
	s.Branches[0].Bend.MinMM = 1
	e := asked(s)
	equal := func(n int) []float64 { // pieces of 1 mm round 1 mm, straight
		in := []float64{1, 1e12}
		for range n {
			in = append(in, 1)
		}
		return in
	}
	for _, c := range []struct {
		what string
		in   []float64
		want float64
	}{
		{"tube.room 0 X", []float64{0, 50}, 0.3}, {"tube.room 0 X", []float64{100, 400}, 0.75}, {"tube.room 0 X", []float64{0, 500}, 1.2},
		{"tube.room 0 X", []float64{0, 750}, 1.6}, {"tube.room 0 X", []float64{0, 1000}, 2}, {"tube.room 0 X", []float64{0, 1500}, 2.8},
		{"tube.room 0 X", []float64{0, 101}, 0.3 + 0.9/400},
		{"layer.over 1", []float64{3, 3.2, 1, 0.1}, 5.3},
		// Seven of 1 mm that touch lie round 1 ÷ sin(π/7) − 1; six round one of their own; five leave a sixth of the turn open.
		{"layer.stand 1", equal(7), 1/math.Sin(math.Pi/7) - 1}, {"layer.stand 1", equal(5), 1}, {"layer.stand 1", equal(2), 1},
		{"layer.stand 1", equal(12), 1/math.Sin(math.Pi/12) - 1}, {"layer.gap 1", equal(5), 1.0 / 6}, {"layer.gap 1", equal(3), 0.5},
		{"layer.gap 1", equal(7), 0},
		{"layer.room 1", []float64{0.05, 2, 0.04, 0.06}, 2}, {"layer.room 1", []float64{0.05, 2, 0.06, 0.07}, -1},
		{"layer.room 1", []float64{0.05, 2, 0.05, 0.05}, 2}, {"layer.room 1", []float64{0.05, 2, 0.04, 0.04}, -1},
		{"layer.room 1", []float64{0.05, 0, 0.06, 0.07}, 0}, {"layer.room 1", []float64{0.05, 1, 0.06, 0.07}, -1},
		{"branch.laid 0", []float64{400, 6, 20, -1}, 368}, {"branch.laid 0", []float64{20, 6, 20, 30}, 0},
		{"branch.floor 0", []float64{2, 3, 1, 4}, math.Sqrt(34)}, {"branch.bend 0", []float64{2, 10, 1, 6}, 20},
	} {
		f := why.Figure{Of: "T"}
		fmt.Sscan(c.what, &f.What, &f.K, &f.Part)
		w, ok := Makers[f.What](e, f)
		if !ok {
			t.Errorf("%s is not explained", c.what)
			continue
		}
		if got := w.Formula(c.in); math.Abs(got-c.want) > 1e-6 {
			t.Errorf("%s of %v: %v, want %v", c.what, c.in, got, c.want)
		}
	}
	for _, c := range [][3]float64{{0, 10, 0}, {1, 10, 10}, {10, 10, 10}, {10.1, 10, 20}, {9.9999999, 10, 10}, {10.000001, 10, 10},
		{7, 0, 7}, {7, -1, 7},
		{0.3, 0.1, 0.3}} {
		if got := upTo(c[0], c[1]); math.Abs(got-c[2]) > 1e-9 {
			t.Errorf("%v up to steps of %v: %v", c[0], c[1], got)
		}
	}
	// The circle round two, three and four equal circles that touch: 2, 1 + 2/√3 and 1 + √2 of their diameters.
	for n, want := range map[int]float64{2: 2, 3: 2.154701, 4: 2.414214} {
		if math.Abs(circleRound[n]-want) > 1e-6 {
			t.Errorf("round %d: %v", n, circleRound[n])
		}
	}
}

// A rod among five is made from the first of them, and a tape diameter is known as well as its wires are.
func TestWhatAFigureIsMadeFrom(t *testing.T) {
	s := sheathed()
	l := &s.Branches[0].Layers[0]
	l.Fillers, l.FillerMM, l.Members = 1, 0.91, append(s.Branches[0].Layers[1].Members, s.Branches[0].Layers[1].Members...)
	w, ok := Makers["layer.filler"](asked(s), why.Figure{What: "layer.filler", Of: "T"})
	if !ok || w.In[0].From == nil || w.In[0].From.Part != "b" {
		t.Errorf("%v %+v", ok, w)
	}
	for k, cut := range []unit.Millimetre{0.9, 0, 500} {
		s.Wires[k].Cut, s.H.Wires[k].Size = cut, "22"
	}
	for _, f := range []why.Figure{{What: "loom.wire"}, {What: "reel.need", Of: "own", Part: "22"}} {
		w, ok := Makers[f.What](asked(s), f)
		if !ok || len(w.In) != 2 || w.In[0].From.Of != "a" || w.In[1].From.Of != "c" {
			t.Errorf("%+v: %v %+v", f, ok, w.In)
		}
	}
	for _, standing := range []catalogue.Standing{catalogue.Memory, catalogue.House} {
		s.Branches[0].Standing = standing
		if w, ok := Makers["layer.tape"](asked(s), why.Figure{What: "layer.tape", Of: "T", K: 1}); !ok || w.In[0].Standing != standing {
			t.Errorf("%v: %v %+v", standing, ok, w.In[0])
		}
	}
}
