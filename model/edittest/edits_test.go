package edittest_test

import (
	"bytes"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/edittest"
	"contralay/model/file"
	"contralay/model/shorttest"
)

// edits is how many edits follow one another in each check: 2,000 in the hundred checks of an
// ordinary test, 5,000 with -rapid.checks=250.
const edits = 20

func text(h *model.Harness) []byte { return file.Encode(file.Document{Harness: *h}) }

func start(t *testing.T, name string) *model.Harness {
	t.Helper()
	d, err := file.Load("../../testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return &d.Harness
}

// Whatever edits follow one another: what each of them makes loads and is saved alike, the
// harness that it was made of is not touched, and all of them are undone, by what the history
// keeps, back to where they began.
func TestRandomEdits(t *testing.T) {
	var from []*model.Harness
	for _, name := range []string{"every-key.toml", "example.toml", "feeds.toml", "trunk.toml"} {
		from = append(from, start(t, name))
	}
	from = append(from, &model.Harness{})
	made := map[string]int{}
	edited := func(t *rapid.T) {
		first := rapid.SampledFrom(from).Draw(t, "start")
		states := [][]byte{text(first)}
		var history []model.Earlier
		last := edittest.Some(t, first, edits, func(name string, was, is *model.Harness) {
			before, now := states[len(states)-1], text(is)
			if got := text(was); !bytes.Equal(got, before) {
				t.Fatalf("%s changed the harness that it was given:\n%s\nwas\n%s", name, got, before)
			}
			d, err := file.Parse(now, "after "+name)
			if err != nil {
				t.Fatalf("%s: what it makes does not load: %v\n%s", name, err, now)
			}
			if again := file.Encode(d); !bytes.Equal(again, now) {
				t.Fatalf("%s: saved again it is other:\n%s\nwas\n%s", name, again, now)
			}
			made[name]++
			states, history = append(states, now), append(history, model.EarlierOf(was, is))
		})
		for k := len(history) - 1; k >= 0; k-- {
			last = history[k].Of(last)
			if !bytes.Equal(text(last), states[k]) {
				t.Fatalf("undone %d of %d, it is not what it was:\n%s\nwas\n%s", len(history)-k, len(history), text(last), states[k])
			}
		}
	}
	// A kind that needs two others before it may not come up in one round.
	lacks := func(e edittest.Edit) bool { return made[e.Name] == 0 }
	for round := 0; round < 6 && !t.Failed(); round++ {
		if rapid.Check(t, edited); !shorttest.Long() || !slices.ContainsFunc(edittest.Edits(), lacks) {
			break
		}
	}
	if t.Failed() || !shorttest.Long() {
		return // a few rounds need not meet every kind
	}
	all := 0
	for _, e := range edittest.Edits() {
		all += made[e.Name]
		if made[e.Name] == 0 {
			t.Errorf("%q was never made", e.Name)
		}
	}
	t.Logf("%d edits were made, %d kinds", all, len(made))
}

// Two edits of one name would be told apart by nobody.
func TestEditsHaveNamesOfTheirOwn(t *testing.T) {
	var names []string
	for _, e := range edittest.Edits() {
		if e.Name == "" || e.Do == nil || slices.Contains(names, e.Name) {
			t.Errorf("%q", e.Name)
		}
		names = append(names, e.Name)
	}
}
