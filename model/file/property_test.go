package file_test

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/model/visible"
)

// Any harness that can be represented is written, read back equal and written alike.
func TestAnyHarnessRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		again(t, file.Document{Harness: harness(t)})
	})
}

func maybe[V any](t *rapid.T, g *rapid.Generator[V]) model.Opt[V] {
	if rapid.Bool().Draw(t, "given") {
		return model.Some(g.Draw(t, "value"))
	}
	return model.Opt[V]{}
}

func maybeList[V any](t *rapid.T, g *rapid.Generator[V], lo, hi int) []V {
	if rapid.Bool().Draw(t, "given") {
		return rapid.SliceOfN(g, lo, hi).Draw(t, "list")
	}
	return nil
}

// from gives quantities from lo up, over the whole range of a float.
func from[Q ~float64](lo float64) *rapid.Generator[Q] {
	return rapid.Map(rapid.Float64Range(lo, 1e9), func(v float64) Q {
		if v == 0 {
			v = 0
		}
		return Q(v)
	})
}

var (
	anyNote = rapid.String()
	anyText = rapid.Map(anyNote, func(s string) string { return visible.Typed(s, true) }) // of one line
	hour    = rapid.IntRange(1, 12)
	some    = rapid.IntRange(0, 9999)
	yesNo   = rapid.Bool()
	mm      = from[unit.Millimetre](0)
	moreMM  = from[unit.Millimetre](math.SmallestNonzeroFloat64)
	share   = from[unit.Ratio](0)
	warm    = from[unit.Celsius](-273.15)
	volt    = from[unit.Volt](0)
)

func word[W any](of []W) *rapid.Generator[W] { return rapid.SampledFrom(of) }

func harness(t *rapid.T) model.Harness {
	h := model.Harness{
		Head: model.Head{
			Name: maybe(t, anyText), Number: maybe(t, anyText), Revision: maybe(t, anyText),
			SupplyV: maybe(t, volt), Units: maybe(t, word([]string{"mm", "in"})), Note: maybe(t, anyNote),
		},
		Rules: rules(t),
	}
	for range rapid.IntRange(0, 2).Draw(t, "reels") {
		h.Reels = append(h.Reels, model.Reel{Spec: anyText.Draw(t, "spec"), Size: anyText.Draw(t, "size"), OverMM: moreMM.Draw(t, "over")})
	}
	places(t, &h)
	wires(t, &h)
	branches(t, &h)
	h.Builds = builds(t)
	h.Board = model.Board{WidthMM: maybe(t, moreMM), HeightMM: maybe(t, moreMM), PegMM: maybe(t, moreMM)}
	if len(h.Breakouts) > 0 && yesNo.Draw(t, "datum") {
		h.Board.Datum = model.Some(h.Breakouts[0].ID)
	}
	for range rapid.IntRange(0, 2).Draw(t, "listed") {
		h.Listed = append(h.Listed, model.Listed{Signal: maybe(t, anyText), Ends: maybeList(t, anyText, 0, 3)})
	}
	for i := range h.Splices { // branches are there only now
		if len(h.Branches) > 0 && yesNo.Draw(t, "toward") {
			h.Splices[i].Toward = model.Some(h.Branches[0].ID)
		}
	}
	return h
}

func rules(t *rapid.T) model.Rules {
	return model.Rules{
		LayRatio: maybe(t, share), LiftMax: maybe(t, share), LiftTight: maybe(t, share), LiftStop: maybe(t, share),
		GapInner: maybe(t, share), GapOuter: maybe(t, share), LumpyAt: maybe(t, share),
		FillerWeight: maybe(t, share), SpareGain: maybe(t, share), SparesWanted: maybe(t, some), LaidFrom: maybe(t, some),
		LeaverWeight: maybe(t, mm), ZoneMM: maybe(t, mm), ZoneLump: maybe(t, share), CutStepMM: maybe(t, mm),
		TailFirstMM: maybe(t, mm), TailSecondMM: maybe(t, mm), LoopMM: maybe(t, mm), BundleMargin: maybe(t, share),
		AmbientC: maybe(t, warm), DropMaxV: maybe(t, volt), Outer: maybe(t, word(model.Hands)),
		Spec: maybe(t, anyText), FillerStock: maybeList(t, moreMM, 0, 3), ColourStock: maybeList(t, anyText, 0, 3),
	}
}

// id is one that no other of the harness has, with any text in it.
func id(t *rapid.T, kind string, i int) string {
	return fmt.Sprintf("%s%d%s", kind, i, rapid.StringMatching(`[a-z "\\#='\[\]é]{0,3}`).Draw(t, "tail"))
}

func places(t *rapid.T, h *model.Harness) {
	for i := range rapid.IntRange(1, 4).Draw(t, "terminations") {
		x := model.Termination{
			ID: id(t, "P", i), Name: maybe(t, anyText), Device: maybe(t, anyText), Insert: maybe(t, anyText),
			Gender: maybe(t, word(model.Genders)), Key: maybe(t, anyText),
			Mount: maybe(t, word(model.Mounts)),
			Datum: maybe(t, word(model.Data)),
			Clock: maybe(t, hour), Boot: maybe(t, anyText), BootClock: maybe(t, hour),
			Reserved: maybeList(t, anyText, 0, 2), LoopMM: maybe(t, mm), Cavities: maybeList(t, anyText, 0, 2),
		}
		if yesNo.Draw(t, "contacts") {
			x.Contacts = rapid.MapOfN(anyText, rapid.SliceOfN(anyText, 0, 2), 0, 2).Draw(t, "contacts")
		}
		if yesNo.Draw(t, "seal") {
			a := mm.Draw(t, "seal")
			x.SealMM = []unit.Millimetre{a, max(a, mm.Draw(t, "seal"))}
		}
		h.Terminations = append(h.Terminations, x)
	}
	for i := range rapid.IntRange(1, 3).Draw(t, "breakouts") {
		h.Breakouts = append(h.Breakouts, model.Breakout{ID: id(t, "J", i), Name: maybe(t, anyText), Transition: maybe(t, anyText),
			Build: maybe(t, word(model.Closures)), ZoneMM: maybe(t, mm)})
	}
	for i := range rapid.IntRange(0, 2).Draw(t, "splices") {
		h.Splices = append(h.Splices, model.Splice{ID: id(t, "S", i), At: h.Breakouts[0].ID, OffsetMM: maybe(t, mm),
			Part: maybe(t, anyText)})
	}
}

func wires(t *rapid.T, h *model.Harness) {
	ends := []string{""}
	for _, x := range h.Terminations {
		ends = append(ends, x.ID+":A", x.ID+":b:c \"")
	}
	for _, x := range h.Splices {
		ends = append(ends, x.ID)
	}
	end := word(ends)
	var free []string
	for i := range rapid.IntRange(0, 6).Draw(t, "wires") {
		w := model.Wire{ID: id(t, "W", i), Signal: maybe(t, anyText), From: maybe(t, end), To: maybe(t, end),
			Spec: anyText.Draw(t, "spec"), Size: anyText.Draw(t, "size"), Colour: maybe(t, anyText),
			Amps: maybe(t, from[unit.Ampere](0)), Role: maybe(t, word(model.Roles)),
			Note: maybe(t, anyText)}
		free = append(free, w.ID)
		w.Return = maybe(t, word(append([]string{""}, free...)))
		h.Wires = append(h.Wires, w)
	}
	for i := range rapid.IntRange(0, 2).Draw(t, "units") {
		n := rapid.IntRange(0, len(free)).Draw(t, "in the unit")
		drain := word(append([]string{"shell", "cut"}, ends...))
		h.Units = append(h.Units, model.Unit{ID: id(t, "U", i), Name: maybe(t, anyText), Wires: append([]string{}, free[:n]...),
			Build: maybe(t, word(model.UnitBuilds)), Shield: maybe(t, yesNo),
			DrainFrom: maybe(t, drain), DrainTo: maybe(t, drain), OverMM: maybe(t, mm)})
		free = free[n:]
	}
}

// branches joins each place after the first to one before it: a tree. Layers hold
// units, and wires that are in none.
func branches(t *rapid.T, h *model.Harness) {
	var joined, loose []string
	inUnit := map[string]bool{}
	for _, u := range h.Units {
		loose = append(loose, u.ID)
		for _, w := range u.Wires {
			inUnit[w] = true
		}
	}
	for _, w := range h.Wires {
		if !inUnit[w.ID] {
			loose = append(loose, w.ID)
		}
	}
	for _, x := range h.Breakouts {
		joined = append(joined, x.ID)
	}
	for _, x := range h.Terminations {
		joined = append(joined, x.ID)
	}
	for i := 1; i < len(joined); i++ {
		h.Branches = append(h.Branches, model.Branch{ID: id(t, "B", i), Name: maybe(t, anyText),
			From: word(joined[:i]).Draw(t, "from"), To: joined[i], LengthMM: moreMM.Draw(t, "length"),
			ToleranceMM: maybeList(t, mm, 2, 2), BendMM: maybe(t, mm), BendDeg: maybe(t, from[unit.Degree](0)),
			LeavesDeg: maybe(t, degrees(170)), Vias: vias(t),
			Environment: maybeList(t, word(model.Surroundings), 0, 3),
			Supported:   maybe(t, yesNo), AmbientC: maybe(t, warm), Make: maybe(t, word(model.Makes)),
			Outer: maybe(t, word(model.Hands)), Layers: layers(t, loose), Covers: covers(t), AsBuilt: asBuilt(t)})
	}
}

func degrees(most float64) *rapid.Generator[unit.Degree] {
	return rapid.Map(rapid.Float64Range(-most, most), func(v float64) unit.Degree {
		if v == 0 {
			v = 0
		}
		return unit.Degree(v)
	})
}

func vias(t *rapid.T) (all []model.Via) {
	for range rapid.IntRange(0, 2).Draw(t, "vias") {
		all = append(all, model.Via{AtMM: mm.Draw(t, "at"), TurnDeg: degrees(180).Draw(t, "turn"), RadiusMM: maybe(t, mm)})
	}
	return all
}

func layers(t *rapid.T, free []string) (all []model.Layer) {
	for range rapid.IntRange(0, 3).Draw(t, "layers") {
		l := model.Layer{Fillers: maybe(t, some), FillerMM: maybe(t, mm), BindMM: maybe(t, mm), BindPart: maybe(t, anyText),
			LayMM:  maybe(t, mm),
			Locked: maybe(t, yesNo)}
		if n := rapid.IntRange(-1, len(free)).Draw(t, "in the layer"); n >= 0 {
			l.Of = append([]string{}, free[:n]...)
			l.Pinned = append([]string{}, free[:n/2]...)
			free = free[n:]
		}
		all = append(all, l)
	}
	return all
}

func covers(t *rapid.T) (all []model.Cover) {
	for range rapid.IntRange(0, 2).Draw(t, "covers") {
		all = append(all, model.Cover{What: word(model.CoverKinds()).Draw(t, "what"),
			Part: maybe(t, anyText), FromMM: maybe(t, mm), ToMM: maybe(t, mm)})
	}
	return all
}

func builds(t *rapid.T) (all []model.Build) {
	for i := range rapid.IntRange(0, 2).Draw(t, "builds") {
		b := model.Build{Serial: id(t, "n", i), Revision: maybe(t, anyText), Begun: maybe(t, anyText), Note: maybe(t, anyNote),
			Done: maybeList(t, anyText, 0, 3), GoesBy: maybeList(t, anyText, 0, 2)}
		for range rapid.IntRange(0, 2).Draw(t, "of each") {
			b.Shelf = append(b.Shelf, model.Shelved{Spec: maybe(t, anyText), Part: maybe(t, anyText), OverMM: maybe(t, mm),
				WallMM: maybe(t, mm)})
			b.Signed = append(b.Signed, model.Signature{Step: anyText.Draw(t, "step"), By: anyText.Draw(t, "by"), At: maybe(t, anyText)})
			b.Readings = append(b.Readings, model.Reading{Branch: anyText.Draw(t, "branch"), Layer: some.Draw(t, "layer"),
				OverMM: maybeList(t, mm, 0, 3), LayMM: maybe(t, mm)})
			b.Used = append(b.Used, model.UsedWire{Spec: anyText.Draw(t, "spec"), Size: anyText.Draw(t, "size"),
				UsedMM: mm.Draw(t, "used")})
			b.Tubes = append(b.Tubes, model.Recovered{Branch: anyText.Draw(t, "branch"), OverMM: mm.Draw(t, "over")})
			b.Again = append(b.Again, model.Again{End: anyText.Draw(t, "end"), Times: some.Draw(t, "times")})
			b.Apart = append(b.Apart, model.Deviation{At: anyText.Draw(t, "at"), Says: anyText.Draw(t, "says"), Step: maybe(t, anyText),
				Steps: maybeList(t, anyText, 0, 2), By: maybe(t, anyText), On: maybe(t, anyText)})
			b.Steps = append(b.Steps, model.Ticked{Key: anyText.Draw(t, "key"), At: maybe(t, anyText), By: maybe(t, anyText),
				What: what(t), Sheet: what(t), Undone: maybe(t, anyText)})
			b.Tests = append(b.Tests, model.Test{Net: maybe(t, anyText), Feed: maybe(t, anyText), Pull: maybe(t, anyText),
				Ohm: maybe(t, reading), Milliohm: maybe(t, reading), Megohm: maybe(t, reading), Volt: maybe(t, reading),
				Newton: maybe(t, reading), Limit: maybe(t, reading), Instrument: maybe(t, anyText), At: maybe(t, anyText),
				By: maybe(t, anyText)})
			b.Lots = append(b.Lots, model.Lot{Of: anyText.Draw(t, "of"), Lot: anyText.Draw(t, "lot"), Expires: maybe(t, anyText),
				At: maybe(t, anyText), By: maybe(t, anyText)})
		}
		all = append(all, b)
	}
	return all
}

var reading = rapid.Float64Range(0, 1e6)

// what is what a step made, of any kind of step.
func what(t *rapid.T) model.Opt[model.What] {
	if !yesNo.Draw(t, "what") {
		return model.Opt[model.What]{}
	}
	return model.Some(model.What{Spec: maybe(t, anyText), Size: maybe(t, anyText), Colour: maybe(t, anyText), Part: maybe(t, anyText),
		Place: maybe(t, anyText), Hand: maybe(t, word([]model.Hand{model.HandLeft, model.HandRight, model.HandStraight})),
		Members: maybeList(t, anyText, 0, 3), Ends: maybeList(t, anyText, 0, 3), Fillers: maybe(t, some), FillerMM: maybe(t, mm),
		BindMM: maybe(t, mm), MM: maybe(t, mm), FinishedMM: maybe(t, mm), FromMM: maybe(t, mm), ToMM: maybe(t, mm), LayMM: maybe(t, mm),
		OverMM: maybe(t, mm), Path: maybeList(t, anyText, 0, 3), PathMM: maybeList(t, mm, 0, 3)})
}

func asBuilt(t *rapid.T) (all []model.AsBuilt) {
	for range rapid.IntRange(0, 2).Draw(t, "as built") {
		all = append(all, model.AsBuilt{Layer: some.Draw(t, "layer"), OverMM: maybeList(t, mm, 0, 3)})
	}
	return all
}

// FuzzParse: whatever the bytes, either a clear error or a document that is
// written, read and written alike.
func FuzzParse(f *testing.F) {
	for _, name := range []string{"example.toml", "every-key.toml"} {
		text, err := os.ReadFile("../../testdata/" + name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	for _, b := range broken {
		f.Add([]byte(b.text))
	}
	for _, c := range commands {
		f.Add([]byte("format = 1\n[harness]\nname = \"a" + c.toml + "\"\nnote = \"b" + c.toml + "\"\n\"k" + c.toml + "\" = 1\n"))
	}
	f.Add([]byte("\xef\xbb\xbf# h\r\n\r\nformat=1\r\n[harness]\r\nname='''\r\na'''\r\nnote=\"\"\"a\\\r\n  b\"\"\"\"\r\nsupply_v=0x10\r\n"))
	f.Add([]byte("#\t\u00a0\u2028\nformat=1\nbranch=[]\nrules={lay_ratio=1e-400," +
		"zone_mm=9007199254740993,ambient_c=-0.0,filler_stock_mm=[1_0,1e3,]}\n"))
	f.Fuzz(func(t *testing.T, text []byte) {
		d, err := file.Parse(text, "f.toml")
		if err != nil {
			for line := range strings.SplitSeq(err.Error(), "\n") { // a line for each, that says something and commands nothing
				if c, found := visible.Find(line); found || !strings.HasPrefix(line, "f.toml") || len(line) < len("f.toml:1: ") {
					t.Fatalf("%q holds %U", err, c)
				}
			}
			return
		}
		again(t, d)
	})
}
