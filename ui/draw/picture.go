package draw

import "strconv"

// Picture draws a section as a map of labels in w×h cells, in the bytes 0x20 to 0x7E, the
// caption on the last line. Where that is too small for a map, or nothing is laid, it says so in
// one line. The section as it looks is drawn by contralay/ui/draw/shape.
func Picture(s Section, w, h int, p Palette) Canvas {
	c := newCanvas(w, h)
	c.OutOfView = append(c.OutOfView, s.OutOfView...)
	if w < minW || h < minH {
		return sentence(c, s, "the picture needs more room", "picture needs room", "needs room", "room")
	}
	r := s.reach()
	ox, oy := 0.0, 0.0
	if !s.View.whole() {
		ox, oy, r = float64(s.View.X), float64(s.View.Y), float64(s.View.D)/2
	}
	if !(r > 0) {
		return sentence(c, s, "nothing is laid here yet", "nothing laid")
	}
	f := newFrame(w, h-1, ox, oy, r, p.aspect())
	core, short := cores(s.Discs)
	c.Shortened = short

	boundary(&c, s, f, p)
	outlines(&c, s, f, core, p)
	b := place(s, f, core)
	writeLabels(&c, b, s, core, p)
	c.NotShown = notShown(s, b)
	c.centred(h-1, s.caption(w), 0)
	return c
}

// caption says which end the section is seen from and, where it fits, how many
// discs lie outside a zoomed window.
func (s Section) caption(w int) string {
	seen := cellular(s.Seen, true)
	if n := len(s.OutOfView); n > 0 {
		for _, more := range [2]string{" more outside this view", " more outside"} {
			text := strconv.Itoa(n) + more
			if seen != "" {
				text = seen + ", " + text
			}
			if len(text) <= w {
				return text
			}
		}
	}
	return seen
}

// sentence writes the longest of the texts that fits, in the middle, and lists
// every disc as not shown.
func sentence(c Canvas, s Section, texts ...string) Canvas {
	for _, d := range s.Discs {
		c.NotShown = append(c.NotShown, d.ID)
	}
	if c.H == 0 {
		return c
	}
	for _, t := range texts {
		if len(t) <= c.W {
			c.centred((c.H-1)/2, t, 0)
			break
		}
	}
	return c
}

// notShown lists the ids without a label of their own.
func notShown(s Section, b *board) []string {
	var out []string
	k := 0
	for i, d := range s.Discs {
		if k >= len(b.spots) || b.spots[k].disc != i {
			out = append(out, d.ID)
			continue
		}
		if b.spots[k].gone || b.spots[k].group {
			out = append(out, d.ID)
		}
		k++
	}
	return out
}
