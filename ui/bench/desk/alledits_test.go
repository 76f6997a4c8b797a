package desk

import (
	"bytes"
	"os"
	"slices"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/query/add"
	"contralay/calc/query/bulk"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/edit"
	"contralay/model/edittest"
	"contralay/model/file"
	"contralay/model/file/schema"
	"contralay/model/shorttest"
	"contralay/model/unit"
)

// Whatever is added, changed and removed at the bench, in any order and from an empty board or a full one:
// each harness loads, is saved as it was loaded, leaves the one before as it was, and the history undoes them
// all. -rapid.checks=250 makes five thousand.
func TestAnyEditOfTheBench(t *testing.T) {
	shorttest.Turn(t)
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	full, err := file.Load("../../../testdata/example.toml")
	if err != nil {
		t.Fatal(err)
	}
	all := slices.Concat(edittest.Edits(), made(cat), values())
	text := func(h *model.Harness) []byte { return file.Encode(file.Document{Harness: *h}) }
	kinds := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		first := &model.Harness{}
		if rapid.Bool().Draw(t, "full") {
			first = &full.Harness
		}
		began := text(first)
		var past History
		now := edittest.SomeOf(t, all, first, 20, func(name string, was, is *model.Harness) {
			before := text(was)
			past.Record(was)
			kinds[name]++
			written := text(is)
			d, err := file.Parse(written, "edited")
			if err != nil {
				t.Fatalf("%s: what it made does not load: %v\n%s", name, err, written)
			}
			if again := file.Encode(d); !bytes.Equal(again, written) {
				t.Fatalf("%s: saved again it is another file:\n%s\n%s", name, written, again)
			}
			if !bytes.Equal(text(was), before) {
				t.Fatalf("%s: it changed the harness before it", name)
			}
		})
		for past.Steps() > 0 {
			now = past.back(now)
		}
		if got := text(now); !bytes.Equal(got, began) {
			t.Fatalf("all undone, it is\n%s", got)
		}
	})
	total := 0
	for _, n := range kinds {
		total += n
	}
	t.Logf("%d edits were made, of %d of %d kinds", total, len(kinds), len(all))
	if want := os.Getenv("CONTRALAY_EDITS"); want != "" {
		if n, _ := strconv.Atoi(want); total < n {
			t.Errorf("%d edits, %d wanted", total, n)
		}
	}
}

// made are the edits that need to know parts and paths: what the screens of adding and of several wires do.
func made(cat *catalogue.Catalogue) []edittest.Edit {
	with := func(name string, do func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error)) edittest.Edit {
		return edittest.Edit{Name: name, Do: func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
			n, err := do(t, calc.Build(h, cat, nil))
			return n, err == nil && n != h
		}}
	}
	one := func(t *rapid.T, all []string, what string) string {
		return rapid.SampledFrom(append([]string{""}, all...)).Draw(t, what)
	}
	some := func(t *rapid.T, all []string, most int) []string {
		var out []string
		for range min(len(all), rapid.IntRange(1, most).Draw(t, "how many")) {
			if id := rapid.SampledFrom(all).Draw(t, "wire"); !slices.Contains(out, id) {
				out = append(out, id)
			}
		}
		return out
	}
	ids := func(s *sheet.Sheet, n edit.Noun) []string { return edit.IDs(s.H, n) }
	return []edittest.Edit{
		with("a connector", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			a, err := add.Connector(s, add.ConnectorAsk{Insert: one(t, []string{"10-35", "14-35", "18-32"}, "insert"), Cavities: 6,
				Contact: "20"})
			return a.H, err
		}),
		with("devices", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			k := rapid.SampledFrom(s.Cat.Devices).Draw(t, "kind")
			n := rapid.IntRange(1, 4).Draw(t, "count")
			a, err := add.Devices(s, add.DevicesAsk{Kind: k.ID, Count: n, At: one(t, ids(s, edit.Breakout), "at"),
				LengthsMM: make([]unit.Millimetre, n), Controller: one(t, ids(s, edit.Termination), "controller"),
				Feed: rapid.SampledFrom(add.Feedings).Draw(t, "feed")})
			return a.H, err
		}),
		with("spares", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			a, err := add.Spares(s, add.SparesAsk{Count: rapid.IntRange(1, 5).Draw(t, "count"),
				From:     one(t, ids(s, edit.Termination), "from"),
				CappedAt: one(t, ids(s, edit.Breakout), "to")})
			return a.H, err
		}),
		with("a run", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			places := append(ids(s, edit.Termination), ids(s, edit.Breakout)...)
			h, _, err := edit.AddBranch(s.H, one(t, places, "from"), one(t, places, "to"),
				unit.Millimetre(rapid.IntRange(0, 900).Draw(t, "length")))
			return h, err
		}),
		with("sheaths and boots as proposed", func(_ *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			return add.Proposed(s).H, nil
		}),
		with("wires like one", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			m, err := bulk.Like(s, bulk.LikeAsk{Wire: one(t, ids(s, edit.Wire), "wire"), Count: rapid.IntRange(1, 4).Draw(t, "count"),
				DeadEnd: rapid.Bool().Draw(t, "dead end")})
			return m.H, err
		}),
		with("change of several", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			c := bulk.Change{Size: model.Some(rapid.SampledFrom([]string{"20", "22", "24"}).Draw(t, "size"))}
			if rapid.Bool().Draw(t, "spec") {
				c = bulk.Change{Spec: model.Some("AS22759/34"), Amps: model.Some(unit.Ampere(1.5))}
			}
			m, err := bulk.Set(s, some(t, ids(s, edit.Wire), 6), c)
			return m.H, err
		}),
		with("a unit of several", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			m, err := bulk.UnitOf(s, bulk.UnitAsk{Wires: some(t, ids(s, edit.Wire), 3), Shield: rapid.Bool().Draw(t, "shield")})
			return m.H, err
		}),
		with("a splice of several", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			m, err := bulk.SpliceOf(s, bulk.SpliceAsk{Wires: some(t, ids(s, edit.Wire), 4)})
			return m.H, err
		}),
		with("several removed", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			m, err := bulk.Remove(s, some(t, ids(s, edit.Wire), 3))
			return m.H, err
		}),
		with("colours", func(t *rapid.T, s *sheet.Sheet) (*model.Harness, error) {
			m, err := bulk.Colours(s, bulk.ColourAsk{Again: rapid.Bool().Draw(t, "again")})
			return m.H, err
		}),
	}
}

// values are the edits of the pages that have every value of the file: one added, given, cleared, moved or removed.
func values() []edittest.Edit {
	record := func(t *rapid.T, h *model.Harness) (schema.At, schema.Table, bool) {
		tb := rapid.SampledFrom(schema.Tables()).Draw(t, "table")
		n := 1
		if !tb.One {
			n = schema.Count(h, nil, tb.Name)
		}
		if n == 0 {
			return nil, tb, false
		}
		return schema.At{{Table: tb.Name, Index: rapid.IntRange(0, n-1).Draw(t, "which")}}, tb, true
	}
	return []edittest.Edit{
		{Name: "a value given", Do: func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
			at, tb, ok := record(t, h)
			if !ok || len(tb.Keys) == 0 {
				return h, false
			}
			k := rapid.SampledFrom(tb.Keys).Draw(t, "key")
			var v any
			switch k.Kind {
			case schema.KindChoice:
				v = rapid.SampledFrom(k.Words).Draw(t, "word")
			case schema.KindNumber:
				v = rapid.Float64Range(0, 500).Draw(t, "number")
			case schema.KindCount:
				v = int64(rapid.IntRange(k.Least, min(k.Most, 40)).Draw(t, "count"))
			case schema.KindFlag:
				v = rapid.Bool().Draw(t, "flag")
			case schema.KindText, schema.KindNote:
				v = rapid.StringMatching(`[ -~é°]{0,12}`).Draw(t, "text")
			case schema.KindPair:
				v = []any{1.0, 2.5}
			case schema.KindNumbers:
				v = []any{0.5, 1.25}
			default:
				return h, false // what names another thing is the business of the other edits
			}
			n, err := schema.Put(h, at, k.Name, v)
			return n, err == nil
		}},
		{Name: "a value left out", Do: func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
			at, tb, ok := record(t, h)
			if !ok || len(tb.Keys) == 0 {
				return h, false
			}
			n, err := schema.Clear(h, at, rapid.SampledFrom(tb.Keys).Draw(t, "key").Name)
			return n, err == nil && len(n.Check()) == len(h.Check())
		}},
		{Name: "a reel", Do: func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
			n, err := schema.Add(h, nil, "reel", schema.Count(h, nil, "reel"), map[string]any{"spec": "AS22759/32",
				"size": strconv.Itoa(2 * rapid.IntRange(4, 13).Draw(t, "size")), "over_mm": 1.25})
			return n, err == nil && len(n.Check()) == len(h.Check())
		}},
		{Name: "a record moved", Do: func(t *rapid.T, h *model.Harness) (*model.Harness, bool) {
			at, tb, ok := record(t, h)
			if !ok || tb.One {
				return h, false
			}
			n, err := schema.Move(h, at, 0)
			return n, err == nil
		}},
	}
}
