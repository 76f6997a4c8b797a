package runs_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/board/runs"
)

// On the lowest screen, too, a piece that is laid has its neighbours, and the tracer that one starts with
// it at the key; nothing is scrolled for that.
func TestLowScreenHasNeighbours(t *testing.T) {
	shorttest.Turn(t)
	m := runOf(t, "demo.toml", run.CutStep)
	benchtest.Size(m, 40, 12)
	tracers, looked := 0, 0
	for at, s := range runs.RunSteps(m) {
		if s.Kind != run.LayStep {
			continue
		}
		all := runs.Pieces(m, at)
		for k, p := range all {
			runs.Stand(m, at, k)
			screen := benchtest.View(m)
			l, _ := runs.LayerAt(m, s)
			var want []string
			if s.Layer > 0 && l.Tracer != "" && l.Members[0].ID == l.Tracer && k == 0 {
				tracers++
				want = append(want, "tracer: start at the key")
			} else if k > 0 {
				want = append(want, all[k-1].ID+" <")
			}
			switch {
			case k > 0 && k+1 < len(all):
				want = append(want, "< > "+all[k+1].ID)
			case k+1 < len(all):
				want = append(want, "then "+all[k+1].ID)
			}
			for _, text := range want {
				if looked++; !strings.Contains(screen, text) {
					t.Fatalf("%s, %s: no %q on\n%s", s.Key, p.Key, text, screen)
				}
			}
			if !strings.Contains(screen, fmt.Sprintf("%d of %d", k+1, len(all))) {
				t.Fatalf("%s, %s: which of how many is not on\n%s", s.Key, p.Key, screen)
			}
		}
	}
	if tracers < 3 || looked < 200 {
		t.Errorf("%d tracers, %d looked at", tracers, looked)
	}
}

// A reading and what it comes to stand on the screen with the order of the wires, not in its place: with a piece
// its number and its neighbours, with a layer that is all on every piece in order.
func TestReadingLeavesTheOrder(t *testing.T) {
	shorttest.Turn(t)
	const short = 5 // fewer pieces have room beside anything
	m := runOf(t, "demo.toml", run.LayStep)
	m.Change(m.H.EditBuild("1", func(b *model.Build) {
		for i := range m.Sheet.Branches {
			for k, l := range m.Sheet.Branches[i].Layers {
				if len(l.Members) < short {
					continue
				}
				b.Readings = append(b.Readings, model.Reading{Branch: m.H.Branches[i].ID, Layer: k,
					OverMM: []unit.Millimetre{l.OverMM * 1.2}, BareMM: []unit.Millimetre{l.BareMM() * 1.2}})
			}
		}
	}), "")
	pieces, layers, share := 0, 0, 6
	if shorttest.Long() {
		share = 1
	}
	for _, size := range [][2]int{{80, 24}, {40, 12}} {
		benchtest.Size(m, size[0], size[1])
		for at, s := range runs.RunSteps(m) {
			if s.Kind != run.LayStep || at%share != 0 {
				continue // every sixth layer by default: what a reading comes to takes a sheet of its own
			}
			all := runs.Pieces(m, at)
			if len(all) < short {
				continue
			}
			for k := 0; k <= len(all) && (k < len(all) || k > 1); k++ {
				runs.Stand(m, at, k)
				screen := benchtest.View(m)
				if k == len(all) && size[1] == 12 { // no room for a layer: its rows have it
					for _, r := range m.Page(m.ListWidth()).Rows {
						screen += "\n" + r.Line()
					}
				}
				plain := strings.NewReplacer("│", " ", "*", " ", "<", " ", ">", " ", ",", " ").Replace(screen)
				words := strings.Join(strings.Fields(plain), " ")
				want := []string{}
				switch {
				case k == len(all):
					var ids []string
					for _, p := range all {
						ids = append(ids, p.ID)
					}
					want, layers = append(want, strings.Join(ids, " ")), layers+1
				case k > 0:
					want = append(want, all[k-1].ID)
					fallthrough
				default:
					if pieces++; k+1 < len(all) {
						want = append(want, all[k+1].ID)
					}
				}
				if size[0] == 80 && !strings.Contains(screen, "too large for tolerance") && !strings.Contains(screen, "TOO LARGE") &&
					!strings.Contains(screen, "Read ") {
					t.Errorf("%s, %d: nothing is said of the reading:\n%s", s.Key, k, screen)
				}
				for _, text := range want {
					if !strings.Contains(words, text) {
						t.Fatalf("%s, %d: no %q on\n%s", s.Key, k, text, screen)
					}
				}
			}
		}
	}
	if pieces < 200/share || layers < 20/share {
		t.Errorf("%d pieces, %d layers", pieces, layers)
	}
}
