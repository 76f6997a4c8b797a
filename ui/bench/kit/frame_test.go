package kit

import (
	"strings"
	"testing"

	"github.com/charmbracelet/lipgloss"
	"github.com/charmbracelet/x/ansi"

	"contralay/model/shorttest"
	"contralay/ui/draw"
)

// The frame, looked at, in plain characters and without colour.
func TestFrameDrawn(t *testing.T) {
	plain := Frame{
		Head: Head{Number: "HC2 C", Name: "loom", Branch: "T1 Trunk", Ends: "P1 to J1", Length: "560 mm", State: "3 changes", Change: true},
		Steps: Steps{Names: []string{"Wires", "Layers", "Fill", "Sheath", "Build"}, Now: 1, Counts: []string{"38 pieces", "4 spares",
			"no room for what comes after"}},
		Left:  Pane{{"Lay-up", []string{"  centre  C1", "> 1       14 of 14"}}, {"What if", []string{"= as it is"}}},
		Right: Pane{{"From P1", []string{"(the section)"}}},
		Foot:  []string{"layer 1: 14 of 14", "! an open point", "", "Enter open  H help"},
	}
	for _, tt := range []struct {
		name  string
		w, h  int
		ascii bool
		wide  bool
		want  string
	}{
		{"two panes", 64, 16, true, false, `
 HC2 C  loom            T1 Trunk  P1 to J1  560 mm  * 3 changes
 Wires - LAYERS - Fill - Sheath - Build    38 pieces - 4 spares
+ Lay-up --------------------------++ From P1 -----------------+
|  centre  C1                      ||(the section)             |
|> 1       14 of 14                ||                          |
+ What if -------------------------+|                          |
|= as it is                        ||                          |
|                                  ||                          |
|                                  ||                          |
|                                  ||                          |
|                                  ||                          |
+----------------------------------++--------------------------+
 layer 1: 14 of 14
 ! an open point

 Enter open  H help`},
		{"rounded, one pane", 64, 16, false, true, `
 HC2 C  loom            T1 Trunk  P1 to J1  560 mm  ● 3 changes
 Wires ─ LAYERS ─ Fill ─ Sheath ─ Build    38 pieces · 4 spares
╭ Lay-up ──────────────────────────────────────────────────────╮
│  centre  C1                                                  │
│> 1       14 of 14                                            │
├ What if ─────────────────────────────────────────────────────┤
│= as it is                                                    │
│                                                              │
│                                                              │
│                                                              │
│                                                              │
╰──────────────────────────────────────────────────────────────╯
 layer 1: 14 of 14
 ! an open point

 Enter open  H help`},
		{"small", 40, 12, true, false, `
T1 Trunk  P1 to J1  560 mm   * 3 changes
Wires - LAYERS - Fill - Sheath - Build
- Lay-up -------------------------------
  centre  C1
> 1       14 of 14
- What if ------------------------------
= as it is

layer 1: 14 of 14
! an open point

Enter open  H help`},
		{"smallest", 20, 9, true, false, `
T1 Tru~  * 3 changes
< LAYERS >
- Lay-up -----------
  centre  C1
> 1       14 of 14

! an open point

Enter open  H help`},
	} {
		th := NewTheme(draw.Palette{}, tt.ascii)
		got := th.Draw(Arrange(tt.w, tt.h, Want{Wide: tt.wide, Foot: 4}), plain)
		for k := range got {
			got[k] = strings.TrimRight(got[k], " ")
		}
		if text := joined(got); text != strings.TrimPrefix(tt.want, "\n") {
			t.Errorf("%s:\n%s\nwant\n%s", tt.name, text, strings.TrimPrefix(tt.want, "\n"))
		}
	}
}

// awkward are texts that a frame must bear: wide characters, those that stand on others,
// pictures, colours that are not ended, sequences, breaks.
var awkward = []string{
	"線線線線線線線線線線線線線線線線線線線線", "e\u0301a\u0301", "👩\u200d🔧 crimp ❤\ufe0f", "\x1b[31mred", "a\nb", "\x1b[2Jgone", "a\tb",
	"\u202etxt", strings.Repeat("long ", 60), "", "⌀ 10.2 Ω ±0.1 °C",
}

// ended reports whether the last thing a line says of its colours is that they end.
func ended(line string) bool {
	k := strings.LastIndexByte(line, 0x1b)
	return k < 0 || strings.HasPrefix(line[k:], NewTheme(draw.NewPalette(draw.Colours16, true), false).end[Stop])
}

// A frame of any size, with anything in it, is exactly h lines of at most w cells, ends
// its colours in each, and keeps to plain characters where it has to.
func TestFrameFitsEverySize(t *testing.T) {
	p := draw.NewPalette(draw.Colours256, true)
	for at, th := range []*Theme{NewTheme(p, false), NewTheme(p, true), NewTheme(draw.Palette{}, false)} {
		for w := 0; w <= 130; w++ {
			for h := 0; h <= 42; h++ {
				if !shorttest.Long() && (w+h)%3 != at {
					continue // by default each size in one of them
				}
				if (w > 24 && w%7 != 0 || h > 18 && h%5 != 0) && w != RoomyW && w != RoomyW-1 && h != RoomyH {
					continue
				}
				l, f := demo(th, w, h)
				if (w+h)%2 == 0 {
					f = Frame{
						Head: Head{Number: awkward[0], Name: awkward[2], Branch: awkward[(w+h)%len(awkward)], State: awkward[4],
							Change: w%3 == 0},
						Steps: Steps{Names: awkward[:5], Now: w % 6, Place: awkward[6], Says: awkward[3], Counts: awkward},
						Left:  Pane{{awkward[w%len(awkward)], awkward}, {awkward[0], awkward}},
						Right: Pane{{awkward[h%len(awkward)], awkward}, {awkward[2], awkward}}, Foot: awkward,
					}
				}
				got := th.Draw(l, f)
				if len(got) != h {
					t.Fatalf("%d×%d: %d lines", w, h, len(got))
				}
				for k, line := range got {
					if n := ansi.StringWidth(line); n > w {
						t.Fatalf("%d×%d line %d is %d wide: %q", w, h, k, n, line)
					}
					if !ended(line) {
						t.Fatalf("%d×%d line %d does not end its colour: %q", w, h, k, line)
					}
					if strings.ContainsAny(ansi.Strip(line), "\n\t\r") || th.ASCII && draw.Spell(line) != line {
						t.Fatalf("%d×%d line %d: %q", w, h, k, line)
					}
				}
			}
		}
	}
}

// Inside a border nothing is a cell wider or narrower than it should be.
func TestBordersStandInLine(t *testing.T) {
	th := NewTheme(draw.Palette{}, false)
	for _, size := range [][2]int{{64, 16}, {80, 24}, {120, 40}} {
		l := Arrange(size[0], size[1], Want{Foot: 4})
		got := th.Draw(l, Frame{Left: Pane{{"線", awkward}}, Right: Pane{{"b", awkward}}})
		for _, line := range got[2 : size[1]-4] {
			if n := ansi.StringWidth(line); n != size[0] {
				t.Errorf("%v: %d wide: %q", size, n, line)
			}
			if left := ansi.Cut(ansi.Strip(line), l.Left.W+1, l.Left.W+3); !strings.Contains("││ ╮╭ ╯╰", left) {
				t.Errorf("%v: %q stands where the borders meet: %q", size, left, line)
			}
		}
	}
}

func TestArrange(t *testing.T) {
	for _, tt := range []struct {
		w, h int
		wide bool
		want Layout
	}{
		{120, 40, false, Layout{W: 120, H: 40, Head: true, Steps: true, Top: true, Sides: true, Left: Size{70, 32}, Right: Size{46, 32},
			Foot: 4, Margin: " "}},
		{120, 40, true, Layout{W: 120, H: 40, Head: true, Steps: true, Top: true, Sides: true, Left: Size{118, 32}, Foot: 4, Margin: " "}},
		{80, 24, false, Layout{W: 80, H: 24, Head: true, Steps: true, Top: true, Sides: true, Left: Size{50, 16}, Right: Size{26, 16},
			Foot: 4, Margin: " "}},
		{40, 12, false, Layout{W: 40, H: 12, Head: true, Steps: true, Top: true, Left: Size{40, 5}, Foot: 4}},
		{20, 9, false, Layout{W: 20, H: 9, Head: true, Steps: true, Top: true, Left: Size{20, 3}, Foot: 3}},
	} {
		if got := Arrange(tt.w, tt.h, Want{Wide: tt.wide, Foot: 4}); got != tt.want {
			t.Errorf("%d×%d:\n%+v, want\n%+v", tt.w, tt.h, got, tt.want)
		}
	}
}

func BenchmarkFrame(b *testing.B) {
	th := NewTheme(draw.NewPalette(draw.TrueColour, true), false)
	l, f := demo(th, 120, 40)
	for b.Loop() {
		th.Draw(l, f)
	}
}

// The same two panes by lipgloss, without titles.
func BenchmarkFrameByLipgloss(b *testing.B) {
	th := NewTheme(draw.NewPalette(draw.TrueColour, true), false)
	l, f := demo(th, 120, 40)
	box := th.Style(Text).Border(lipgloss.RoundedBorder())
	left := strings.Join(append(f.Left[0].Lines, f.Left[1].Lines...), "\n")
	right := strings.Join(f.Right[0].Lines, "\n")
	for b.Loop() {
		lipgloss.JoinHorizontal(lipgloss.Top, box.Width(l.Left.W).Height(l.Left.H).Render(left),
			box.Width(l.Right.W).Height(l.Right.H).Render(right))
	}
}

func BenchmarkRows(b *testing.B) {
	th := NewTheme(draw.NewPalette(draw.TrueColour, true), false)
	for b.Loop() {
		for k := range 32 {
			th.Row(Row{Text: "101  Injector 1 switched       P1:A  INJ1:2  22  1.09", Hand: k == 3, Mark: "?"}, 70)
		}
	}
}
