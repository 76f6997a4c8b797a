package bench

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What was measured is listed beside what was predicted; + corrects the shop by it and every
// figure follows, . takes it back, and the history stays.
func TestLearnedScreen(t *testing.T) {
	m := open(t, "example.toml")
	m.cfg.Learn = func(c catalogue.Correction) (*catalogue.Catalogue, error) {
		return catalogue.Merge(m.cfg.Cat, &catalogue.Catalogue{Corrections: []catalogue.Correction{c}}), nil
	}
	b := &m.sheet.Branches[m.branch]
	layer := len(b.Layers) - 1
	over, id := b.OverMM, m.h.Branches[m.branch].ID
	h := m.h
	for k := range 10 {
		h = h.EditBuild(fmt.Sprint(k), func(b *model.Build) {
			b.Readings = []model.Reading{{Branch: id, Layer: layer, OverMM: []unit.Millimetre{over * unit.Millimetre(1.03+0.0005*float64(k))}}}
		})
	}
	m.change(h, "measured")
	m.open(learnedScreen())
	at := func(text string) row {
		t.Helper()
		p := m.page(m.listWidth())
		k := slices.IndexFunc(p.rows, func(r row) bool { return strings.HasPrefix(r.key, text) })
		if k < 0 {
			t.Fatalf("no row %q:\n%s", text, m.View())
		}
		return p.rows[k]
	}
	at("over, ").step(m, 1)
	if got := m.sheet.Branches[m.branch]; got.OverMM < over*1.02 || got.Learned.Of == "" || m.trouble {
		t.Errorf("over %v, was %v: %s", got.OverMM, over, m.says)
	}
	if strip := m.figures(arrange(200, 40, true)); !strings.Contains(strip, "predicted") || !strings.Contains(strip, "spread") {
		t.Errorf("the strip: %s", strip)
	}
	at("in use over, ").drop(m)
	if got := m.sheet.Branches[m.branch].OverMM; got != over {
		t.Errorf("withdrawn: %v, was %v", got, over)
	}
	if r := at("in use over, "); !strings.Contains(r.detail, "then withdrawn") {
		t.Errorf("the history is gone: %s", r.text)
	}
}
