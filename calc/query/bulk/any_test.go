package bulk_test

import (
	"bytes"
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/query/bulk"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
)

// anyHarness is a tree of breakouts and terminations with wires between them, some of them laid
// in layers, spliced, on feeds, in units: sound as a file, sensible or not.
func anyHarness(t *rapid.T) *model.Harness {
	h := &model.Harness{}
	pick := func(what string, n int) int { return rapid.IntRange(0, n-1).Draw(t, what) }
	var places []string
	for i := range rapid.IntRange(1, 3).Draw(t, "breakouts") {
		h.Breakouts = append(h.Breakouts, model.Breakout{ID: fmt.Sprintf("J%d", i+1)})
		places = append(places, h.Breakouts[i].ID)
	}
	h.Splices = append(h.Splices, model.Splice{ID: "S1", At: "J1"})
	for i := range rapid.IntRange(2, 4).Draw(t, "terminations") {
		term := model.Termination{ID: fmt.Sprintf("P%d", i+1)}
		for c := range rapid.IntRange(0, 9).Draw(t, "cavities") {
			term.Cavities = append(term.Cavities, fmt.Sprint(c+1))
		}
		switch n := len(term.Cavities); pick("kind", 4) {
		case 0:
			term.Contacts = map[string][]string{"20": term.Cavities[:n/2], "16": term.Cavities[n/2:]}
		case 1:
			term.SealMM = []unit.Millimetre{1, 1.4}
		case 2:
			if n > 0 {
				term.Reserved = term.Cavities[n-1:]
			}
		}
		h.Terminations, places = append(h.Terminations, term), append(places, term.ID)
	}
	for i, p := range places[1:] {
		h.Branches = append(h.Branches, model.Branch{ID: fmt.Sprintf("B%d", i+1), From: places[min(pick("on", i+1), len(h.Breakouts)-1)],
			To:       p,
			LengthMM: unit.Millimetre(rapid.IntRange(50, 900).Draw(t, "length"))})
	}
	used := map[string]bool{}
	end := func() model.Opt[string] {
		if pick("spliced", 6) == 0 {
			return model.Some("S1")
		}
		for range 5 {
			x := &h.Terminations[pick("at", len(h.Terminations))]
			c := fmt.Sprint(pick("cavity", 10) + 1)
			if len(x.Cavities) > 0 {
				c = x.Cavities[pick("listed", len(x.Cavities))]
			}
			if at := x.ID + ":" + c; !used[at] {
				used[at] = true
				return model.Some(at)
			}
		}
		return model.Opt[string]{}
	}
	for i := range rapid.IntRange(1, 9).Draw(t, "wires") {
		w := model.Wire{ID: fmt.Sprint(101 + i), From: end(), To: end(), Spec: "AS22759/32",
			Size: rapid.SampledFrom([]string{"24", "22", "20", "16",
				"0.35mm2"}).Draw(t, "size"), Role: maybe(t, "role", rapid.SampledFrom(model.Roles)),
			Colour: maybe(t, "colour", rapid.SampledFrom([]string{"0", "6", "92", "PK", "odd"})),
			Amps:   maybe(t, "amps", rapid.SampledFrom([]unit.Ampere{0, 0.5, 3, 40}))}
		if i > 0 && pick("returns", 4) == 0 {
			w.Return = model.Some(fmt.Sprint(101 + pick("return", i)))
		}
		if w.From.Set && !w.To.Set {
			w.CappedAt = maybe(t, "capped", rapid.SampledFrom(places))
		}
		h.Wires = append(h.Wires, w)
	}
	if n := len(h.Wires); n > 3 {
		h.Feeds = append(h.Feeds, model.Feed{ID: "F1", Amps: model.Some[unit.Ampere](5), Device: model.Some(model.ProtectionBlade),
			Wires: []string{h.Wires[0].ID, h.Wires[1].ID}})
		h = h.AddUnit(model.Unit{ID: "U1", Wires: []string{h.Wires[n-1].ID, h.Wires[n-2].ID}, Build: model.Some(model.BuildPair)})
	}
	if s := sheetOf(t, h); pick("laid", 2) == 0 { // as somebody might have laid it
		for b := range s.Branches {
			if all := s.Branches[b].Components; len(all) > 1 {
				n := 1 + pick("centre", len(all)-1)
				h = h.EditBranch(b, func(b *model.Branch) { b.Layers = []model.Layer{{Of: all[:n]}, {Of: all[n:]}} })
			}
		}
	}
	return h
}

func maybe[T any](t *rapid.T, what string, g *rapid.Generator[T]) model.Opt[T] {
	if rapid.Bool().Draw(t, what) {
		return model.Some(g.Draw(t, what))
	}
	return model.Opt[T]{}
}

func sheetOf(t interface{ Fatal(...any) }, h *model.Harness) *sheet.Sheet {
	c, err := shelf()
	if err != nil {
		t.Fatal(err)
	}
	return calc.Build(h, c, nil)
}

// anyBulk is one of the operations with an ask that makes sense or does not.
func anyBulk(t *rapid.T, s *sheet.Sheet) (*model.Harness, []string, error) {
	h := s.H
	var ids []string
	for k := range h.Wires {
		if rapid.Bool().Draw(t, "chosen") {
			ids = append(ids, h.Wires[k].ID)
		}
	}
	one := "nobody" // where all are removed
	if len(h.Wires) > 0 {
		one = rapid.SampledFrom(h.Wires).Draw(t, "wire").ID
	}
	size := rapid.SampledFrom([]string{"24", "22", "20", "12", "7"}).Draw(t, "size")
	var got bulk.Made
	var err error
	switch op := rapid.SampledFrom([]string{"like", "range", "set", "unit", "splice", "remove", "colours"}).Draw(t, "what"); op {
	case "like":
		got, err = bulk.Like(s, bulk.LikeAsk{Wire: one, Count: rapid.IntRange(0, 9).Draw(t, "n"),
			DeadEnd: rapid.Bool().Draw(t, "dead end")})
	case "range":
		side := func() bulk.Ends {
			k := rapid.IntRange(0, len(h.Terminations)-1).Draw(t, "termination")
			if rapid.IntRange(0, 5).Draw(t, "splice") == 0 {
				return bulk.Ends{Splice: "S1"}
			}
			return bulk.Ends{Termination: h.Terminations[k].ID,
				Cavities: bulk.FreeFrom(s, k, "", "AS22759/32", size, rapid.IntRange(0, 4).Draw(t, "n"), nil)}
		}
		got, err = bulk.Range(s, bulk.RangeAsk{From: side(), To: side(), Spec: "AS22759/32", Size: size, Role: model.RoleSignal})
	case "set":
		got, err = bulk.Set(s, ids, bulk.Change{Size: model.Some(size), Amps: maybe(t, "amps", rapid.Just[unit.Ampere](2)),
			Colour: maybe(t, "colour", rapid.SampledFrom([]string{"", "6"}))})
	case "unit":
		drain := rapid.SampledFrom([]string{"", bulk.DrainShell, bulk.DrainCut, bulk.DrainCavity, "S1", "P1:1"})
		got, err = bulk.UnitOf(s, bulk.UnitAsk{Wires: ids, Shield: rapid.Bool().Draw(t, "shield"), DrainFrom: drain.Draw(t, "from"),
			DrainTo: drain.Draw(t, "to")})
	case "splice":
		common := rapid.SampledFrom([]string{"", "P1", "P2"}).Draw(t, "common")
		got, err = bulk.SpliceOf(s, bulk.SpliceAsk{Wires: ids, Common: common, At: rapid.SampledFrom([]string{"", "J1"}).Draw(t, "at")})
	case "remove":
		got, err = bulk.Remove(s, ids)
	default:
		c, err := bulk.Colours(s, bulk.ColourAsk{Wires: ids, Again: rapid.Bool().Draw(t, "again"),
			Stock: rapid.SampledFrom([][]string{nil, {"0"}, {"0", "1", "2"}}).Draw(t, "stock")})
		return c.H, c.Wires, err
	}
	return got.H, got.Wires, err
}

// Whatever is done in bulk, to whatever harness: the old one stays as it was; the new one loads,
// saves byte-equal, and puts no more into a cavity than was there before; what is refused makes
// nothing.
func TestAnyBulkOnAnyHarness(t *testing.T) {
	done, refused := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		s := sheetOf(t, anyHarness(t))
		for range rapid.IntRange(1, 3).Draw(t, "operations") {
			before := file.Encode(file.Document{Harness: *s.H})
			h, made, err := anyBulk(t, s)
			if !bytes.Equal(before, file.Encode(file.Document{Harness: *s.H})) {
				t.Fatal("the old harness is not as it was")
			}
			if err != nil {
				refused++
				if h != nil || err.Error() == "" {
					t.Fatalf("refused (%v), and made something", err)
				}
				continue
			}
			done++
			text := file.Encode(file.Document{Harness: *h})
			d, err := file.Parse(text, "test")
			if err != nil {
				t.Fatalf("%v made what does not load: %v\n%s", made, err, text)
			}
			if again := file.Encode(d); !bytes.Equal(text, again) {
				t.Fatalf("saves otherwise:\n%s\n%s", text, again)
			}
			next := sheetOf(t, h)
			for k, term := range next.Terms {
				for _, c := range term.Cavities {
					was := s.Terms[k].State[c]
					now := term.State[c]
					if n, m := len(was.Wires)+min(1, len(was.Drain)), len(now.Wires)+min(1, len(now.Drain)); m > 1 && m > n {
						t.Fatalf("%s of %s held %v %s and holds %v %s", c, h.Terminations[k].ID, was.Wires, was.Drain, now.Wires, now.Drain)
					}
				}
			}
			s = next
		}
	})
	if done == 0 || refused == 0 {
		t.Errorf("%d done, %d refused: both must occur", done, refused)
	}
}
