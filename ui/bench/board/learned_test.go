package board_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board"
	"contralay/ui/bench/desk"
)

// What was measured is listed beside what was predicted; + corrects the shop by it and every
// figure follows, . takes it back, and the history stays.
func TestLearnedScreen(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	m.Cfg.Learn = func(c catalogue.Correction) (*catalogue.Catalogue, error) {
		return catalogue.Merge(m.Cfg.Cat, &catalogue.Catalogue{Corrections: []catalogue.Correction{c}}), nil
	}
	b := &m.Sheet.Branches[m.Branch]
	layer := len(b.Layers) - 1
	over, id := b.OverMM, m.H.Branches[m.Branch].ID
	h := m.H
	for k := range 10 {
		h = h.EditBuild(fmt.Sprint(k), func(b *model.Build) {
			b.Readings = []model.Reading{{Branch: id, Layer: layer,
				OverMM: []unit.Millimetre{over * unit.Millimetre(1.03+0.0005*float64(k))}}}
		})
	}
	m.Change(h, "measured")
	m.Show(board.LearnedKind, "")
	at := func(text string) desk.Row {
		t.Helper()
		p := m.Page(m.ListWidth())
		k := slices.IndexFunc(p.Rows, func(r desk.Row) bool { return strings.HasPrefix(r.Key, text) })
		if k < 0 {
			t.Fatalf("no row %q:\n%s", text, benchtest.View(m))
		}
		return p.Rows[k]
	}
	at("over, ").Step(m, 1)
	if got := m.Sheet.Branches[m.Branch]; got.OverMM < over*1.02 || got.Learned.Of == "" || m.Trouble {
		t.Errorf("over %v, was %v: %s", got.OverMM, over, m.Says)
	}
	benchtest.Size(m, 200, 40)
	if strip := benchtest.View(m); !strings.Contains(strip, "predicted") || !strings.Contains(strip, "spread") {
		t.Errorf("no strip with it:\n%s", strip)
	}
	at("in use over, ").Drop(m)
	if got := m.Sheet.Branches[m.Branch].OverMM; got != over {
		t.Errorf("withdrawn: %v, was %v", got, over)
	}
	if r := at("in use over, "); !strings.Contains(r.Detail, "then withdrawn") {
		t.Errorf("the history is gone: %s", r.Text)
	}
}
