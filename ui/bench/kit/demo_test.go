package kit

import (
	"fmt"
	"strings"

	"github.com/charmbracelet/bubbles/key"

	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/draw/shape"
)

// demo is a screen as the bench shows it, for tests and for looking at.
func demo(t *Theme, w, h int) (Layout, Frame) {
	l := Arrange(w, h, Want{Foot: 4})
	f := Frame{
		Head: Head{Number: "HC2-ENG-01 C", Name: "engine loom", Branch: "T1 Trunk", Ends: "P1 to J1", Length: "560 mm",
			State: "3 changes", Change: true},
		Steps: Steps{Names: []string{"Wires", "Layers", "Fill", "Sheath", "Build"}, Now: 1,
			Counts: []string{"38 pieces", "4 spares", "room for 1"}},
	}
	row := func(text string, hand, use bool, mark string) string {
		return t.Row(Row{Text: text, Hand: hand, InUse: use, Mark: mark}, l.Left.W)
	}
	layers := []string{
		t.Heads("layer   pieces           OD  lay    room", l.Left.W),
		row("centre  C1 D1            5.1", false, false, ""),
		row("1       14 of 14         7.6  RH 91", true, false, ""),
		row("2       22 of 23        10.2  LH 122   1", false, false, "?"),
		row("3       27 of 26        12.9  RH 155  -1", false, false, "!"),
	}
	whatIf := []string{
		t.Heads("change           OD  sheath   g   bend", l.Left.W),
		row("as it is       10.2   5/8   105    61", false, true, ""),
		row("centre: three   9.9   5/8   101    60", false, false, ""),
		row("spares: 6      10.9   5/8   110    66", false, false, ""),
	}
	f.Left = Pane{{"Lay-up", layers}, {"What if", whatIf}}
	f.Right = Pane{{"From P1, by colour of the wire", picture(t, l.Right)}}
	f.Foot = []string{
		"layer 2: 22 of 23, LH, lay 122 mm, 4.1 turns, easy",
		t.Paint(Warn, "? warn N1: N1 bends before layer 1 has made one turn (lay 91 mm, bend 50 mm)"),
		t.Field(OpenField(FieldOf{Label: "bend radius", Unit: "mm", Value: "40", Number: true}, "12.5"), max(w-2, 0)),
		t.Bar(demoKeys(t), w-2*len(l.Margin)),
	}
	return l, f
}

func demoKeys(t *Theme) []BarKey {
	entry := func(worth int, says string, keys ...string) BarKey {
		return BarKey{key.NewBinding(key.WithKeys(keys...), key.WithHelp(t.Shown(keys...), says)), worth}
	}
	return []BarKey{
		entry(1, "row", "up", "down"), entry(3, "step", "left", "right"), entry(6, "change", "+", "-"), entry(7, "open", "enter"),
		entry(8, "undo", "backspace"), entry(4, "back", "esc"), entry(2, "why", "w"), entry(Never, "help", "h"),
	}
}

func picture(t *Theme, s Size) []string {
	if s.W < 20 || s.H < 8 {
		return nil
	}
	section := draw.Section{OverMM: 10.2, Seen: "seen from P1"}
	x := [8]unit.Millimetre{3.7, 2.6, 0, -2.6, -3.7, -2.6, 0, 2.6}
	for k := range 8 {
		section.Discs = append(section.Discs, draw.Disc{ID: fmt.Sprint(101 + k), Label: fmt.Sprint(101 + k), D: 2.6, Class: k,
			Selected: k == 2, Layer: 1, X: x[k], Y: x[(k+6)%8]})
	}
	if t.ASCII || t.Palette.Depth() == draw.NoColour {
		return draw.Picture(section, s.W, s.H, t.Palette).Styled(t.Palette)
	}
	section.ByClass = true
	return shape.Picture(section, s.W, s.H, t.Palette).Styled(t.Palette)
}

// palettes are the terminals there are.
func palettes() map[string]draw.Palette {
	out := map[string]draw.Palette{}
	for name, p := range map[string]draw.Profile{"none": draw.NoColour, "16": draw.Colours16, "256": draw.Colours256,
		"all": draw.TrueColour} {
		out[name+" dark"], out[name+" light"] = draw.NewPalette(p, true), draw.NewPalette(p, false)
	}
	return out
}

func joined(lines []string) string { return strings.Join(lines, "\n") }
