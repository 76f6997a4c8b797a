package schema_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/file/schema"
	"contralay/model/shorttest"
)

// loaded is a file of testdata.
func loaded(t *testing.T, name string) *model.Harness {
	t.Helper()
	text, err := os.ReadFile("../../../testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	d, err := file.Parse(text, name)
	if err != nil {
		t.Fatal(err)
	}
	return &d.Harness
}

// eachRecord visits every record of a harness, and the tables on one line that are given.
func eachRecord(h *model.Harness, visit func(t schema.Table, at schema.At)) {
	var walk func(t schema.Table, at schema.At)
	inside := func(all []schema.Table, at schema.At) {
		for _, t := range all {
			name := t.Name[strings.LastIndexByte(t.Name, '.')+1:]
			for i := range schema.Count(h, at, name) {
				walk(t, at.In(name, i))
			}
		}
	}
	walk = func(t schema.Table, at schema.At) {
		visit(t, at)
		for _, k := range t.Keys {
			if line := at.In(k.Name, 0); k.Kind == schema.KindTable && schema.Has(h, line) {
				walk(schema.Table{Name: line.Table(), One: true, Keys: k.Keys}, line)
			}
		}
		inside(t.Tables, at)
	}
	inside(schema.Tables(), nil)
}

// What a key has, given to it once more, changes nothing, and every key can be left out and given
// back unless a file must give it.
func TestEveryKeyIsGivenBack(t *testing.T) {
	h := loaded(t, "every-key.toml")
	was, keys := schema.Text(h), 0
	eachRecord(h, func(table schema.Table, at schema.At) {
		for _, k := range table.Keys {
			v := schema.Get(h, at, k.Name)
			if v == nil {
				continue
			}
			keys++
			same, err := schema.Put(h, at, k.Name, v)
			if err != nil || !same.Same(h) {
				t.Errorf("%s %s: given back: %v", at, k.Name, err)
				continue
			}
			out, err := schema.Clear(h, at, k.Name)
			if k.Must {
				if err == nil {
					t.Errorf("%s %s: left out, though a file must give it", at, k.Name)
				}
				continue
			}
			if err != nil || schema.Get(out, at, k.Name) != nil || out.Same(h) {
				t.Errorf("%s %s: left out: %v", at, k.Name, err)
				continue
			}
			back, err := schema.Put(out, at, k.Name, v)
			if err != nil || schema.Text(back) != was {
				t.Errorf("%s %s: left out and given: %v", at, k.Name, err)
			}
		}
	})
	if keys < 250 {
		t.Errorf("only %d keys met", keys)
	}
	if schema.Text(h) != was {
		t.Error("the harness itself has changed")
	}
}

// Random edits leave the harness before each of them as it was, byte for byte.
func TestEditsShareAndChangeNothing(t *testing.T) {
	h := loaded(t, "every-key.toml")
	r := rand.New(rand.NewPCG(20, 6))
	type place struct {
		table schema.Table
		at    schema.At
	}
	made := map[string]int{}
	for range shorttest.Rounds(1200) {
		var all []place
		eachRecord(h, func(t schema.Table, at schema.At) { all = append(all, place{t, at}) })
		p := all[r.IntN(len(all))]
		k := p.table.Keys[r.IntN(len(p.table.Keys))]
		was := schema.Text(h)
		var out *model.Harness
		var err error
		what := ""
		switch n := r.IntN(10); {
		case n < 4:
			what = "put"
			out, err = schema.Put(h, p.at, k.Name, anyValue(r, k))
		case n < 5:
			what = "leave out"
			out, err = schema.Clear(h, p.at, k.Name)
		case n < 7 && !p.table.One:
			what = "move"
			out, err = schema.Move(h, p.at, r.IntN(3))
		case n < 8 && !p.table.One:
			what = "add"
			values := map[string]any{}
			for _, k := range p.table.Keys {
				if k.Must {
					values[k.Name] = anyValue(r, k)
				}
			}
			out, err = schema.Add(h, p.at.Up(), p.at.Last().Table, -1, values)
		case n < 9 && !p.table.One && len(all) > 40:
			what = "remove"
			out, err = schema.Remove(h, p.at)
		default:
			continue
		}
		if schema.Text(h) != was {
			t.Fatalf("%s %s %s changed the harness before it", what, p.at, k.Name)
		}
		if err != nil {
			if out != h {
				t.Fatalf("%s %s %s: refused, and another harness", what, p.at, k.Name)
			}
			continue
		}
		made[what]++
		text := schema.Text(out)
		d, err := file.Parse([]byte(text), "made")
		if err != nil {
			t.Fatalf("%s %s %s: %v", what, p.at, k.Name, err)
		}
		if schema.Text(&d.Harness) != text {
			t.Fatalf("%s %s %s: it is not saved as it was loaded", what, p.at, k.Name)
		}
		h = out
	}
	for _, what := range []string{"put", "leave out", "move", "add", "remove"} {
		if made[what] < 20 {
			t.Errorf("%d times %s", made[what], what)
		}
	}
}

// anyValue is a value that a key may have, as far as its kind says; what it refers to may not be
// there.
func anyValue(r *rand.Rand, k schema.Key) any {
	names := []string{"P1", "J1", "T1", "101", "102", "P1:A", "S1", "x", "22", "C1"}
	one := func() any { return names[r.IntN(len(names))] }
	switch k.Kind {
	case schema.KindChoice:
		return k.Words[r.IntN(len(k.Words))]
	case schema.KindNumber:
		return float64(1+r.IntN(300)) / 4
	case schema.KindCount:
		return int64(k.Least + r.IntN(min(k.Most-k.Least+1, 12)))
	case schema.KindFlag:
		return r.IntN(2) == 0
	case schema.KindTexts, schema.KindIDs:
		return []any{one(), one()}[:r.IntN(3)]
	case schema.KindWords:
		return []any{k.Words[r.IntN(len(k.Words))]}
	case schema.KindNumbers:
		return []any{float64(1 + r.IntN(9))}
	case schema.KindPair:
		return []any{1.0, float64(1 + r.IntN(9))}
	case schema.KindMap:
		return map[string]any{one().(string): []any{one()}}
	case schema.KindEach:
		return map[string]any{one().(string): one()}
	case schema.KindTable:
		return map[string]any{"mm": float64(r.IntN(90))}
	}
	return one()
}

// What a key cannot be is refused: it says what is allowed, and the harness stays the same one.
func TestRefusedSaysWhatIsAllowed(t *testing.T) {
	h := loaded(t, "every-key.toml")
	refusals := 0
	eachRecord(h, func(table schema.Table, at schema.At) {
		for _, k := range table.Keys {
			for _, v := range notAllowed(k) {
				out, err := schema.Put(h, at, k.Name, v)
				var r *schema.Refused
				switch {
				case err == nil:
					t.Errorf("%s %s took %v", at, k.Name, v)
				case !errors.As(err, &r) || r.Says == "" || r.Key != k.Name:
					t.Errorf("%s %s: %v", at, k.Name, err)
				case r.Allowed == "":
					t.Errorf("%s %s: %v: nothing says what is allowed", at, k.Name, err)
				case out != h:
					t.Errorf("%s %s: refused, and another harness", at, k.Name)
				}
				refusals++
			}
		}
	})
	for _, c := range []struct{ at, key, want string }{
		{"wire[0]", "from", `no termination has the id "P9"; allowed: TERMINATION:CAVITY, where TERMINATION is a termination`},
		{"splice[0]", "at", "no breakout has the id"},
		{"feed[0]", "wires", "no wire has the id"},
		{"branch[0]", "to", "no termination or breakout has the id"},
		{"termination[1]", "id", `"P1" is given twice; allowed: an id that no other termination has`},
	} {
		at, _ := schema.ParseAt(c.at)
		v := any("P9:A")
		switch c.key {
		case "wires":
			v = []any{"999"}
		case "id":
			v = "P1"
		}
		if out, err := schema.Put(h, at, c.key, v); err == nil || !strings.Contains(err.Error(), c.want) || out != h {
			t.Errorf("%s %s: %v", c.at, c.key, err)
		}
	}
	at, _ := schema.ParseAt("termination[0]")
	if out, err := schema.Remove(h, at); err == nil || out != h || !strings.Contains(err.Error(), `no termination has the id "P1"`) {
		t.Errorf("a termination that wires end in was removed: %v", err)
	}
	if refusals < 600 {
		t.Errorf("only %d refusals", refusals)
	}
}

// notAllowed is what a key may not have.
func notAllowed(k schema.Key) []any {
	wrong := []any{map[string]any{"a": "b"}, []any{[]any{}}}
	switch k.Kind {
	case schema.KindNumber:
		wrong = append(wrong, "5", -1e9, math.NaN(), 2e9)
		if strings.Contains(k.Allowed(), "more than 0") {
			wrong = append(wrong, 0.0)
		}
	case schema.KindCount:
		wrong = append(wrong, int64(k.Least-1), int64(k.Most+1), 1.5, "1")
	case schema.KindFlag:
		wrong = append(wrong, "yes", int64(1))
	case schema.KindChoice:
		wrong = append(wrong, "no such word", "", int64(1))
	case schema.KindTexts, schema.KindIDs, schema.KindWords:
		wrong = append(wrong, "a", []any{"a\nb"}, []any{int64(1)})
	case schema.KindEach:
		return []any{map[string]any{"a": int64(1)}, map[string]any{"a": "b\nc"}, []any{"a"}, "a"}
	case schema.KindNumbers:
		wrong = append(wrong, 1.0, []any{"1"}, []any{-1.0})
	case schema.KindPair:
		wrong = append(wrong, []any{1.0}, []any{1.0, 2.0, 3.0}, []any{-1.0, 2.0})
	case schema.KindText, schema.KindID:
		wrong = append(wrong, int64(1), "a\nb", string(rune(0x1b))+"[2J", "\u202e")
	case schema.KindNote:
		wrong = append(wrong, int64(1), true)
	}
	return wrong
}

// Two records that are added to one harness are not the same one, in any table.
func TestAddedTwice(t *testing.T) {
	h := loaded(t, "every-key.toml")
	r := rand.New(rand.NewPCG(1, 1))
	tables := 0
	eachRecord(h, func(table schema.Table, at schema.At) {
		if table.One || at.Last().Index > 0 {
			return
		}
		n := schema.Count(h, at.Up(), at.Last().Table)
		var made []*model.Harness
		for _, mark := range []string{"Z1", "Z2"} {
			values := map[string]any{}
			for _, k := range table.Keys {
				switch v := schema.Get(h, at, k.Name); {
				case !k.Must:
				case k.Name == "id" || k.Name == "serial":
					values[k.Name] = mark
				case v != nil:
					values[k.Name] = v
				default:
					values[k.Name] = anyValue(r, k)
				}
			}
			switch at.Table() {
			case "branch":
				values["from"], values["to"] = "INJ1", "Z"
				h2, err := schema.Add(h, nil, "termination", -1, map[string]any{"id": "Z"})
				if err != nil {
					t.Fatal(err)
				}
				out, err := schema.Add(h2, nil, "branch", -1, values)
				if err != nil {
					t.Fatal(err)
				}
				made = append(made, out)
				continue
			case "unit":
				values["wires"] = []any{}
			}
			out, err := schema.Add(h, at.Up(), at.Last().Table, -1, values)
			if err != nil {
				t.Fatalf("%s: %v", at, err)
			}
			made = append(made, out)
		}
		tables++
		for _, k := range table.Keys {
			if k.Kind != schema.KindText || k.Must {
				continue
			}
			last := at.Up().In(at.Last().Table, n)
			for i, mark := range []string{"first", "second"} {
				var err error
				if made[i], err = schema.Put(made[i], last, k.Name, mark); err != nil {
					t.Fatal(err)
				}
			}
			if v := schema.Get(made[0], last, k.Name); v != "first" {
				t.Errorf("%s: one of two that were added has the %s of the other: %v", at, k.Name, v)
			}
		}
		if id := schema.Get(made[0], at.Up().In(at.Last().Table, n), "id"); id != nil && id != "Z1" {
			t.Errorf("%s: the first of two is %v", at, id)
		}
	})
	if tables < 20 {
		t.Errorf("only %d tables", tables)
	}
}
