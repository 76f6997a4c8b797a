package kit

import (
	"strings"

	"contralay/ui/draw"
)

// Head is the first line: what is worked on, which branch of it, whether it is saved.
type Head struct {
	Number string // number and revision
	Name   string // of the harness
	Branch string // id and name
	Ends   string // "P1 to J1"
	Length string // with its unit
	State  string // "3 changes", "saved"
	Change bool   // something is not saved
}

// head puts the branch over the second pane where it fits there, so that it stays in
// place; the state is at the right edge and is never left out. What has no room goes in
// this order: name, ends, number, length.
func (t *Theme) head(l Layout, h Head) string {
	w := l.W - len(l.Margin)
	state := draw.Clean(h.State)
	if h.Change && state != "" {
		state = t.Signs.Changed + " " + state
	}
	state = draw.Cut(t.Plain(state), max(w, 0), t.ASCII)
	look := Quiet
	if h.Change {
		look = Strong
	}
	if draw.Width(state) == w {
		return l.Margin + t.Paint(look, state)
	}
	room := w - draw.Width(state) // with the gap before the state
	if room > 0 && l.Margin != "" {
		room-- // a margin at the right edge too
	}
	branch, left := t.branch(h, room-2)
	left = draw.Cut(left, max(room-draw.Width(branch)-4, 0), t.ASCII)
	at := max(room-2-draw.Width(branch), 0)
	if over := l.Left.W + 2 - len(l.Margin); l.Right.W > 0 && over < at && draw.Width(left)+2 < over {
		at = over + 1
		at = min(at, room-2-draw.Width(branch))
	}
	if left == "" {
		at = 0
	}
	number := t.Text(h.Number)
	var b strings.Builder
	b.WriteString(l.Margin)
	if rest, is := strings.CutPrefix(left, number); is && number != "" {
		b.WriteString(t.Paint(Strong, number) + rest)
	} else {
		b.WriteString(left)
	}
	b.WriteString(draw.Pad("", at-draw.Width(left)))
	b.WriteString(t.Paint(Strong, branch))
	b.WriteString(draw.Pad("", room-max(at, draw.Width(left))-draw.Width(branch)))
	b.WriteString(t.Paint(look, state))
	return b.String()
}

// branch is as much of the branch as has room, and what may stand to its left.
func (t *Theme) branch(h Head, room int) (branch, left string) {
	join := func(parts ...string) string {
		var some []string
		for _, p := range parts {
			if p = t.Text(p); p != "" {
				some = append(some, p)
			}
		}
		return strings.Join(some, "  ")
	}
	for _, c := range []struct{ branch, left string }{
		{join(h.Branch, h.Ends, h.Length), join(h.Number, h.Name)},
		{join(h.Branch, h.Ends, h.Length), join(h.Number)},
		{join(h.Branch, h.Ends, h.Length), ""},
		{join(h.Branch, h.Length), ""},
	} {
		gap := 2
		if c.left == "" || c.branch == "" {
			gap = 0
		}
		if draw.Width(c.branch)+gap+draw.Width(c.left) <= room {
			return c.branch, c.left
		}
	}
	if only := join(h.Branch); only != "" {
		return draw.Cut(only, max(room, 0), t.ASCII), ""
	}
	return "", join(h.Number, h.Name)
}

// Steps is the second line: the steps with the one in hand in capitals, and counts at
// the right edge; or, on a screen beside the steps, its name.
type Steps struct {
	Names  []string
	Now    int    // the step in hand
	Place  string // a screen beside the steps, in place of them
	Says   string // after the place or the steps: "Esc goes back"
	Counts []string
}

// steps gives the steps first, then what is said, then as many counts as have room,
// the first of them longest.
func (t *Theme) steps(l Layout, s Steps) string {
	w := l.W - 2*len(l.Margin)
	text, n := t.names(s, w)
	if says := t.Text(s.Says); says != "" && n+3+draw.Width(says) <= w {
		text, n = text+"   "+t.Paint(Quiet, says), n+3+draw.Width(says)
	}
	counts, gap := "", t.Plain(" · ")
	for _, c := range s.Counts {
		c = t.Text(c)
		if counts != "" {
			c = counts + gap + c
		}
		if n+2+draw.Width(c) > w {
			break
		}
		counts = c
	}
	if counts != "" {
		text += draw.Pad("", w-n-draw.Width(counts)) + counts
	}
	return l.Margin + text
}

// names is the steps, painted, in at most w cells, with how many cells they take.
func (t *Theme) names(s Steps, w int) (string, int) {
	if s.Place != "" || s.Now < 0 || s.Now >= len(s.Names) {
		place := draw.Cut(t.Text(strings.ToUpper(s.Place)), max(w, 0), t.ASCII)
		return t.Paint(StepNow, place), draw.Width(place)
	}
	for _, gap := range []string{t.Signs.Between, " "} {
		n := (len(s.Names) - 1) * draw.Width(gap)
		for _, name := range s.Names {
			n += draw.Width(name)
		}
		if n > w {
			continue
		}
		var b strings.Builder
		for k, name := range s.Names {
			if k > 0 {
				b.WriteString(t.Paint(Border, gap))
			}
			if k == s.Now {
				b.WriteString(t.Paint(StepNow, strings.ToUpper(name)))
				continue
			}
			b.WriteString(t.Plain(name))
		}
		return b.String(), n
	}
	only := draw.Cut(t.Signs.Left+" "+t.Plain(strings.ToUpper(s.Names[s.Now]))+" "+t.Signs.Right, max(w, 0), t.ASCII)
	return t.Paint(StepNow, only), draw.Width(only)
}
