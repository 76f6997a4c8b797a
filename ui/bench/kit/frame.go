package kit

import (
	"strings"

	"github.com/charmbracelet/lipgloss"

	"contralay/ui/draw"
)

// Frame is one screen of the bench, the same at every step:
//
//	 HC2-ENG-01 C  engine loom         T1 Trunk  P1 to J1  560 mm    ● 3 changes
//	 Wires ─ LAYERS ─ Fill ─ Sheath ─ Build            38 pieces · 4 spares
//	╭ Lay-up ───────────────────────────╮╭ From P1, by colour of the wire ─────╮
//	│   layer   pieces        OD        ││                                     │
//	├ What if ──────────────────────────┤│                                     │
//	╰───────────────────────────────────╯╰─────────────────────────────────────╯
//	 layer 2: 22 of 23, LH, lay 122 mm
//	 ! the worst open point
//	 ↑↓ row  ←→ step  Enter open
type Frame struct {
	Head  Head
	Steps Steps
	Left  Pane // takes the keys
	Right Pane // is looked at; left out where the layout has no room for it
	Foot  []string
}

// Pane is a framed part of the screen, one part under the other.
type Pane []Part

// Part is a title in the border and the lines under it. Lines may carry colours; they
// are cut or filled to the width. Lines that have no room are left out from the end;
// a part that has none for its title and a line is left out whole, so that nothing
// stands under the title of another.
type Part struct {
	Title string
	Lines []string
}

// pieces are the painted bits of border that every line of a frame uses.
type pieces struct {
	border           lipgloss.Border
	side, between    string // │ and ││
	rule             string // a long rule, cut to length
	open, close      string // what begins and ends the look of a border
	ruleSize         int    // bytes of one character of the rule
	teeLeft, teeLast string
}

// longRule is as many cells as a rule of one piece may take; a wider pane repeats it.
const longRule = 512

// cut makes the pieces of a theme. lipgloss gives the characters; the border itself
// is put together here: its Border and JoinHorizontal know no title in the border and
// take 0.8 ms for two panes of 120×40 (BenchmarkFrameByLipgloss), this 0.05.
func cut(t *Theme) pieces {
	b := lipgloss.RoundedBorder()
	if t.ASCII {
		b = lipgloss.ASCIIBorder()
	}
	return pieces{
		border: b, side: t.Paint(Border, b.Left), between: t.Paint(Border, b.Right+b.Left),
		rule: strings.Repeat(b.Top, longRule), ruleSize: len(b.Top),
		open: t.begin[Border], close: t.end[Border],
		teeLeft: b.MiddleLeft, teeLast: b.MiddleRight,
	}
}

// Draw draws a frame: exactly layout.H lines of at most layout.W cells, whatever
// stands in them.
func (t *Theme) Draw(l Layout, f Frame) []string {
	out := make([]string, 0, max(l.H, 0))
	if l.Head {
		out = append(out, t.head(l, f.Head))
	}
	if l.Steps {
		out = append(out, t.steps(l, f.Steps))
	}
	out = t.panes(out, l, f)
	for k := range l.Foot {
		line := ""
		// The bar stands on the last line, and what has no room goes from the top.
		if n := len(f.Foot) - l.Foot + k; n >= 0 {
			line = f.Foot[n]
		}
		out = append(out, t.fitted(l.Margin, line, l.W))
	}
	for len(out) < l.H {
		out = append(out, "")
	}
	return out[:max(l.H, 0)]
}

// fitted is a line with its margin, in at most w cells.
func (t *Theme) fitted(margin, line string, w int) string {
	if line == "" {
		return ""
	}
	return margin + strings.TrimRight(t.Fit(line, w-len(margin)), " ")
}

// lay puts the parts of a pane into h lines: for each its text, or that it is a title.
func (p Pane) lay(h int) []laid {
	out := make([]laid, 0, h)
	for k, part := range p {
		if k > 0 {
			if len(out)+2 > h {
				break
			}
			out = append(out, laid{part.Title, true})
		}
		for _, text := range part.Lines {
			if len(out) < h {
				out = append(out, laid{text, false})
			}
		}
	}
	for len(out) < h {
		out = append(out, laid{})
	}
	return out
}

// laid is one line of a pane.
type laid struct {
	text  string
	title bool
}

// Title is what stands in the upper border.
func (p Pane) Title() string {
	if len(p) == 0 {
		return ""
	}
	return p[0].Title
}

func (t *Theme) panes(out []string, l Layout, f Frame) []string {
	left := f.Left.lay(l.Left.H)
	b, c := &t.pieces.border, &t.pieces
	if !l.Sides {
		if l.Top {
			out = append(out, t.rule(b.Top, b.Top, f.Left.Title(), Title, l.W))
		}
		for _, line := range left {
			if line.title {
				out = append(out, t.rule(b.Top, b.Top, line.text, Title, l.W))
				continue
			}
			out = append(out, t.Fit(line.text, l.W))
		}
		return out
	}
	two := l.Right.W > 0
	top := t.rule(b.TopLeft, b.TopRight, f.Left.Title(), Title, l.Left.W+2)
	bottom := t.rule(b.BottomLeft, b.BottomRight, "", Title, l.Left.W+2)
	var right []laid
	if two {
		right = f.Right.lay(l.Right.H)
		top += t.rule(b.TopLeft, b.TopRight, f.Right.Title(), TitleOff, l.Right.W+2)
		bottom += t.rule(b.BottomLeft, b.BottomRight, "", Title, l.Right.W+2)
	}
	out = append(out, top)
	var s strings.Builder
	for k, line := range left {
		s.Reset()
		s.Grow(l.W + 128)
		if line.title {
			s.WriteString(t.rule(c.teeLeft, c.teeLast, line.text, Title, l.Left.W+2))
		} else {
			s.WriteString(c.side)
			s.WriteString(t.Fit(line.text, l.Left.W))
		}
		if !two {
			if !line.title {
				s.WriteString(c.side)
			}
			out = append(out, s.String())
			continue
		}
		beside := right[k]
		switch {
		case beside.title:
			if !line.title {
				s.WriteString(c.side)
			}
			s.WriteString(t.rule(c.teeLeft, c.teeLast, beside.text, TitleOff, l.Right.W+2))
		default:
			if line.title {
				s.WriteString(c.side)
			} else {
				s.WriteString(c.between)
			}
			s.WriteString(t.Fit(beside.text, l.Right.W))
			s.WriteString(c.side)
		}
		out = append(out, s.String())
	}
	return append(out, bottom)
}

// rule is a line of the border of w cells with a title in it: ╭ Lay-up ───╮.
func (t *Theme) rule(first, last, title string, look Look, w int) string {
	c := &t.pieces
	if w < 2 {
		return c.open + c.stretch(w) + c.close
	}
	free := w - 2
	if free < 4 {
		title = ""
	}
	if title == "" {
		return c.open + first + c.stretch(free) + last + c.close
	}
	title = draw.Cut(t.Text(title), free-3, t.ASCII)
	return c.open + first + c.close + " " + t.begin[look] + title + t.end[look] + " " + c.open +
		c.stretch(free-2-draw.Width(title)) + last + c.close
}

// stretch is a rule of n cells.
func (c *pieces) stretch(n int) string {
	if n <= 0 {
		return ""
	}
	if n > longRule {
		return strings.Repeat(c.border.Top, n)
	}
	return c.rule[:n*c.ruleSize]
}
