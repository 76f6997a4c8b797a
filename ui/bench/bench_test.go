package bench_test

import (
	"flag"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers"
	"contralay/ui/draw"
)

var update = flag.Bool("update", false, "write the golden screens anew; look at them before accepting")

func TestFrameFitsEverySize(t *testing.T) {
	benchtest.EachOrSome(t, func(t *testing.T, screen string) {
		m := benchtest.OpenAt(t, "example.toml", screen)
		for w := 20; w <= 200; w += 7 {
			for h := 8; h <= 60; h += 3 {
				if !benchtest.Turn(screen, w/7+h/3, 18) {
					continue
				}
				benchtest.Size(m, w, h)
				lines := strings.Split(benchtest.View(m), "\n")
				if len(lines) != h {
					t.Fatalf("%d x %d: %d lines", w, h, len(lines))
				}
				for _, l := range lines {
					if draw.Width(l) > w {
						t.Fatalf("%d x %d: a line of %d cells: %q", w, h, draw.Width(l), l)
					}
				}
			}
		}
	})
}

func TestGoldenScreens(t *testing.T) {
	type size [2]int
	three := []size{{80, 24}, {120, 40}, {40, 12}}
	shots := map[string][]size{}
	for _, screen := range []string{"wires", "layers", "what if", "fill", "sheath", "build", "run", "run wire", "run layer", "run test",
		"steps", "run change", "one more", "arrangement"} {
		shots[screen] = three
	}
	for _, screen := range []string{"branches", "which connector", "end", "splices", "lists", "threading", "worst first", "sizes", "feeds",
		"feed", "quit",
		"several wires", "marked wires", "wires from here",
		"why", "unsaved work", "file changed", "help", "run difference", "who works", "still needed"} {
		shots[screen] = three[:1]
	}
	t.Parallel()
	screens := slices.Sorted(maps.Keys(shots))
	if !*update {
		screens = shorttest.Some(screens)
	}
	for _, screen := range screens {
		sizes := shots[screen]
		t.Run(screen, func(t *testing.T) {
			m := benchtest.OpenAt(t, "demo.toml", screen)
			if screen == "layers" || screen == "what if" {
				benchtest.Ways(m)
			}
			for _, size := range sizes {
				benchtest.Size(m, size[0], size[1])
				golden(t, fmt.Sprintf("%s-%dx%d.golden", strings.ReplaceAll(screen, " ", "-"), size[0], size[1]), benchtest.View(m))
			}
		})
	}
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	lines := strings.Split(got, "\n")
	for i, l := range lines {
		lines[i] = strings.TrimRight(l, " ")
	}
	got = strings.Join(lines, "\n") + "\n"
	if *update {
		if err := os.MkdirAll("testdata", 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(want) != got {
		t.Errorf("%s differs (go test ./ui/bench -update renews it; look at it first). Got:\n%s", name, got)
	}
}

// loom is n wires of two sizes from one connector to another, laid as proposed.
func loom(t testing.TB, n int) (*model.Harness, *catalogue.Catalogue) {
	t.Helper()
	h := &model.Harness{}
	a, z := model.Termination{ID: "A"}, model.Termination{ID: "Z"}
	for i := range n {
		c := fmt.Sprint(i + 1)
		a.Cavities, z.Cavities = append(a.Cavities, c), append(z.Cavities, c)
		size := "22"
		if i%9 == 0 {
			size = "20"
		}
		h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprint(100 + i), From: model.Some("A:" + c), To: model.Some("Z:" + c),
			Spec: "AS22759/32", Size: size,
			Colour: model.Some(fmt.Sprint(i % 10)), Amps: model.Some[unit.Ampere](0.5)})
	}
	h.Terminations = []model.Termination{a, z}
	h.Branches = []model.Branch{{ID: "T", From: "A", To: "Z", LengthMM: 600}}
	cat := benchtest.Catalogue(t)
	s := calc.Complete(h, cat, nil)
	o := s.Proposals[bundle.PlanKey(s, 0)].Options[0]
	return h.EditBranch(0, func(b *model.Branch) { b.Layers = o.Layers }), cat
}

var sizes = []int{20, 60, 130}

func BenchmarkBuild(b *testing.B) {
	for _, n := range sizes {
		h, cat := loom(b, n)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				calc.Build(h, cat, nil)
			}
		})
		prior := calc.Build(h, cat, nil)
		b.Run(fmt.Sprintf("%d after an edit elsewhere", n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				calc.Build(h, cat, prior)
			}
		})
	}
}

func benchModel(b *testing.B, n int) *desk.Model {
	h, cat := loom(b, n)
	m := benchtest.Ready(bench.New(desk.Config{Doc: file.Document{Harness: *h}, Path: "x", Cat: cat,
		Palette: draw.Palette{Colour: true, Dark: true}}))
	benchtest.Size(m, 120, 40)
	return m
}

func BenchmarkUpdate(b *testing.B) {
	for _, n := range sizes {
		m := benchModel(b, n)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				benchtest.Update(m, benchtest.Message("down"))
			}
		})
	}
}

func BenchmarkView(b *testing.B) {
	for _, n := range sizes {
		m := benchModel(b, n)
		m.Step = layers.Step
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_ = benchtest.View(m)
			}
		})
	}
}
