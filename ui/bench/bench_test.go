package bench_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/bench"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers"
	"contralay/ui/draw"
)

var update = flag.Bool("update", false, "write the golden screens anew; look at them before accepting")

// shelf is the catalogue, read once: it is only read afterwards.
var shelf = sync.OnceValues(catalogue.Default)

func entries(t testing.TB) *catalogue.Catalogue {
	t.Helper()
	c, err := shelf()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// worked holds the proposals of each file of testdata: planning is the slow part,
// and they are only read.
var worked sync.Map

// open is a bench on a file of testdata, with every proposal worked out.
func open(t testing.TB, name string) *desk.Model {
	t.Helper()
	d, err := file.Load(filepath.Join("..", "..", "testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	return openWith(t, name, desk.Config{Doc: d, Path: name, Cat: entries(t), Palette: draw.Palette{}})
}

// openAt is a bench with a screen in front that only some starts have.
func openAt(t testing.TB, name, screen string) *desk.Model {
	t.Helper()
	d, err := file.Load(filepath.Join("..", "..", "testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	c := desk.Config{Doc: d, Path: name, Cat: entries(t), Palette: draw.Palette{}}
	switch screen {
	case "unsaved work":
		was := file.Document{Harness: d.Harness, Head: d.Head}
		h := *d.Harness.EditWire(0, func(w *model.Wire) { w.Size, w.Amps = "20", model.Some(unit.Ampere(3)) })
		is := file.Document{Harness: h}
		c.Left = []desk.Left{{Doc: is, When: "4 May 2026 16:20", Changed: true, Says: file.Differences(was, is),
			Discard: func() error { return nil }}, {Doc: is, When: "3 May 2026 10:00", Discard: func() error { return fmt.Errorf("no") }}}
	case "file changed":
		c.Changed = func(string) bool { return true }
	}
	m := openWith(t, name, c)
	goTo(t, m, everyScreen[screen]...)
	return m
}

// goTo presses keys; "@text" puts the cursor on the row that has the text, if one has.
func goTo(t testing.TB, m *desk.Model, keys ...string) {
	t.Helper()
	for _, k := range keys {
		if want, is := strings.CutPrefix(k, "@"); is {
			p := m.Page(m.ListWidth())
			if at := slices.IndexFunc(p.Rows, func(r desk.Row) bool { return strings.Contains(r.Line(), want) }); at >= 0 {
				m.Cursor[m.CursorKey()] = at
				delete(m.On, m.CursorKey())
			}
			continue
		}
		press(m, k)
	}
}

func openWith(t testing.TB, name string, c desk.Config) *desk.Model {
	t.Helper()
	m := bench.New(c)
	if known, ok := worked.Load(name); ok {
		m.Sheet.Proposals = known.(map[string]sheet.Proposal)
		m.Rebuild()
	}
	m = ready(m)
	worked.Store(name, m.Sheet.Proposals)
	return m
}

// ready runs what would be worked out beside the screen.
func ready(m *desk.Model) *desk.Model {
	for cmd := bench.Init(m); cmd != nil; {
		_, cmd = bench.Update(m, cmd())
	}
	return m
}

// press sends keys by name and runs what they start.
func press(m *desk.Model, keys ...string) {
	for _, k := range keys {
		_, cmd := bench.Update(m, message(k))
		for cmd != nil {
			msg := cmd()
			if _, quit := msg.(tea.QuitMsg); quit {
				return
			}
			_, cmd = bench.Update(m, msg)
		}
	}
}

func message(k string) tea.KeyMsg {
	types := map[string]tea.KeyType{"up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight,
		"enter": tea.KeyEnter, "esc": tea.KeyEsc, "backspace": tea.KeyBackspace, "ctrl+c": tea.KeyCtrlC, "ctrl+z": tea.KeyCtrlZ,
		"delete": tea.KeyDelete, "tab": tea.KeyTab, "end": tea.KeyEnd, "home": tea.KeyHome, "pgdown": tea.KeyPgDown}
	if t, ok := types[k]; ok {
		return tea.KeyMsg{Type: t}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(k)}
}

// every screen, by the keys that open it from the first step.
var everyScreen = map[string][]string{
	"wires": nil, "layers": {"right"}, "fill": {"right", "right"}, "sheath": {"right", "right", "right"},
	"build": {"right", "right", "right", "right"}, "wire": {"enter"}, "layer": {"right", "down", "enter"},
	"branches": {"esc"}, "menu": {"esc", "esc"}, "help": {"h"}, "quit": {"+", "q"}, "field": {"5"},
	"size": {"enter", "down", "down", "enter"}, "to": {"enter", "down", "down", "down", "down", "down", "down", "down", "enter"},
	"worst first": {"@nearest its limit", "enter"}, "sizes": {"@the sizes that do", "enter"}, "feeds": {"@protection", "enter"},
	"feed": {"@protection", "enter", "enter"},
	"duty": {"enter", "@duty", "enter"}, "feed to choose": {"enter", "@feed  ", "enter"}, "data wire": {"@331", "enter"},
	"ends": {"esc", "@terminations", "enter"}, "end": {"esc", "@terminations", "enter", "enter"}, "splices": {"esc", "@splices", "enter"},
	"splice": {"esc", "@splices", "enter", "enter"},
	"lists":  {"esc", "@lists", "enter"}, "split": {"esc", "-"}, "margins": {"right", "right", "right", "@least margin", "enter"},
	"threading": {"right", "right", "right", "@thread on", "enter"},
	"boot":      {"right", "right", "right", "@boot P1", "enter"}, "add cover": {"right", "right", "right", "@add  ", "enter"},
	"cover": {"right", "right", "right", "@add  ", "enter", "down", "down", "enter"},
	"run":   {"right", "right", "right", "right", "@bench run", "enter"},
	"run layer": {"right", "right", "right", "right", "@bench run", "enter", "enter", "enter", "enter", "enter", "enter", "5", ".", "3",
		"enter"},
	"why": {"w"}, "figures": {"right", "end", "enter"}, "unsaved work": nil, "file changed": {"+", "s"},
}

func TestFrameFitsEverySize(t *testing.T) {
	for name := range everyScreen {
		m := openAt(t, "example.toml", name)
		for w := 20; w <= 200; w += 7 {
			for h := 8; h <= 60; h += 3 {
				bench.Update(m, tea.WindowSizeMsg{Width: w, Height: h})
				lines := strings.Split(bench.View(m), "\n")
				if len(lines) != h {
					t.Fatalf("%s at %d x %d: %d lines", name, w, h, len(lines))
				}
				for _, l := range lines {
					if draw.Width(l) > w {
						t.Fatalf("%s at %d x %d: a line of %d cells: %q", name, w, h, draw.Width(l), l)
					}
				}
			}
		}
	}
}

func TestASCIIOnly(t *testing.T) {
	for name := range everyScreen {
		m := openAt(t, "example.toml", name)
		m.Cfg.ASCII = true
		for _, size := range [][2]int{{80, 24}, {120, 40}, {40, 12}, {20, 8}} {
			bench.Update(m, tea.WindowSizeMsg{Width: size[0], Height: size[1]})
			for _, r := range bench.View(m) {
				if r != '\n' && (r < 0x20 || r > 0x7e) {
					t.Fatalf("%s at %v shows %q", name, size, r)
				}
			}
		}
	}
}

func TestGoldenScreens(t *testing.T) {
	type shot struct {
		screen string
		w, h   int
	}
	var shots []shot
	for _, screen := range []string{"wires", "layers", "fill", "sheath", "build"} {
		for _, size := range [][2]int{{80, 24}, {120, 40}, {40, 12}} {
			shots = append(shots, shot{screen, size[0], size[1]})
		}
	}
	for _, screen := range []string{"branches", "end", "splices", "lists", "threading", "worst first", "sizes", "feeds", "feed", "quit",
		"why", "unsaved work", "file changed", "help"} {
		shots = append(shots, shot{screen, 80, 24})
	}
	for _, c := range shots {
		t.Run(fmt.Sprintf("%s %dx%d", c.screen, c.w, c.h), func(t *testing.T) {
			m := openAt(t, "demo.toml", c.screen)
			bench.Update(m, tea.WindowSizeMsg{Width: c.w, Height: c.h})
			golden(t, fmt.Sprintf("%s-%dx%d.golden", strings.ReplaceAll(c.screen, " ", "-"), c.w, c.h), bench.View(m))
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
	cat := entries(t)
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
	m := ready(bench.New(desk.Config{Doc: file.Document{Harness: *h}, Path: "x", Cat: cat,
		Palette: draw.Palette{Colour: true, Dark: true}}))
	bench.Update(m, tea.WindowSizeMsg{Width: 120, Height: 40})
	return m
}

func BenchmarkUpdate(b *testing.B) {
	for _, n := range sizes {
		m := benchModel(b, n)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				bench.Update(m, message("down"))
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
				_ = bench.View(m)
			}
		})
	}
}
