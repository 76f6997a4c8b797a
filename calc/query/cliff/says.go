package cliff

import (
	"fmt"
	"strings"

	"contralay/model/unit"
)

// Says is the strip in sentences, as far as it is worked out: how it is laid, where that is not as it
// would be proposed, what still fits, what comes then, and what fewer would save.
func (s *Strip) Says(sys unit.System) []string {
	now, ok := s.Point(s.Now)
	if !ok || now.Branch == nil {
		return s.OfProposed(sys)
	}
	return append(s.asLaid(now, sys), s.OfProposed(sys)...)
}

// OfProposed is Says without the lay-up in use.
func (s *Strip) OfProposed(sys unit.System) []string {
	now, ok := s.Point(s.Now)
	if !ok {
		return nil
	}
	if now.Branch == nil {
		return []string{fmt.Sprintf("No lay-up of %s keeps what is locked.", s.count(s.Now))}
	}
	out := s.more(now, sys)
	out = append(out, s.fewer(now, sys)...)
	return append(out, s.odd(sys)...)
}

// Room is how many more the lay-up in use takes as it is; 0 where the branch is only proposed.
func (s *Strip) Room() int {
	n := 0
	if s.Laid.Branch != nil {
		for k := range s.Laid.Branch.Layers {
			n += s.Laid.Branch.Layers[k].Room
		}
	}
	return n
}

// asLaid tells the lay-up in use from the one that the strip is of, where their OD is not the same.
func (s *Strip) asLaid(now Point, sys unit.System) []string {
	if s.Laid.Branch == nil || s.Laid.shown() == now.shown() {
		return nil
	}
	text := "As it is laid: OD " + s.Laid.od(sys)
	if room := s.Room(); room > 0 {
		text += fmt.Sprintf(", room for %d", room)
	}
	return []string{text + ".", "Laid as proposed: " + now.od(sys) + "."}
}

// Short is the least that is said: how many more fit, and what comes then; the longest first, each
// shorter one for a screen that has no room for it.
func (s *Strip) Short(sys unit.System) []string {
	now, ok := s.Point(s.Now)
	fit, known := s.Fits()
	switch {
	case ok && now.Branch == nil:
		return []string{"no lay-up"}
	case !ok || !known:
		return nil
	}
	text, then := fits(fit), s.then(now, fit, sys)
	if s.asLaid(now, sys) != nil {
		text = fmt.Sprintf("room %d; %d if laid as proposed", s.Room(), fit)
	}
	next, there := s.Point(s.Now + fit + 1)
	switch {
	case !there && fit == 0 && s.asLaid(now, sys) == nil:
		return []string{"none can be added"}
	case !there:
		return []string{text, fits(fit)}
	case fit == 0 && s.asLaid(now, sys) == nil && next.Branch != nil && next.shown() != now.shown() && then != "OD "+next.od(sys):
		return []string{then + ", OD " + next.od(sys), then}
	case fit == 0 && s.asLaid(now, sys) == nil:
		return []string{then}
	}
	return []string{text + ", then " + then, text, fits(fit)}
}

// then is what comes with the next one after those that fit, in a word or two.
func (s *Strip) then(now Point, fit int, sys unit.System) string {
	next, _ := s.Point(s.Now + fit + 1)
	switch b := between(now, next); {
	case next.Branch == nil:
		return "no lay-up"
	case b.Layer:
		return "a new layer"
	case b.Tube && next.Tube.ID == "":
		return "no tube"
	case b.Tube:
		return "tube " + size(next.Tube.ShelfLabel)
	}
	return "OD " + next.od(sys)
}

func fits(n int) string {
	if n == 1 {
		return "1 still fits"
	}
	return fmt.Sprintf("%d still fit", n)
}

// od is the OD with its unit: to 0.1 mm.
func (p Point) od(sys unit.System) string { return sys.Diameter(p.OverMM) + " " + sys.Name() }

// size is a tube as the shelf says it, without its bores.
func size(label string) string {
	name, _, _ := strings.Cut(label, " (")
	return name
}

// Fits is how many more leave OD and sheath as they are, and whether the next one is known.
func (s *Strip) Fits() (n int, known bool) {
	now, ok := s.Point(s.Now)
	if !ok {
		return 0, false
	}
	for n = s.Now + 1; n <= s.Most; n++ {
		p, ok := s.Point(n)
		if !ok {
			return n - 1 - s.Now, false
		}
		if p.Branch == nil || p.shown() != now.shown() || p.Tube.ID != now.Tube.ID {
			break
		}
	}
	return n - 1 - s.Now, true
}

// more is what still fits, the first count that changes something, and the first layer and the
// first tube after that.
func (s *Strip) more(now Point, sys unit.System) []string {
	fit, known := s.Fits()
	var out []string
	if fit > 0 {
		one := "One more still fits."
		if fit > 1 {
			one = fmt.Sprintf("%d more still fit.", fit)
		}
		out = append(out, one)
	}
	first := s.Now + fit + 1
	if first > s.Most {
		if s.Ends != "" {
			out = append(out, s.Ends+".")
		}
		return out
	}
	if !known {
		return out
	}
	p, _ := s.Point(first)
	if p.Branch == nil {
		return append(out, fmt.Sprintf("No lay-up takes the %s.", s.nth(first)))
	}
	out = append(out, s.says(first, between(s.points[first-1-s.Least], p), p, sys))
	began := between(s.points[first-1-s.Least], p)
	for n := first + 1; n <= s.Most && !(began.Layer && began.Tube); n++ {
		b := s.Begins(n)
		is := Begins{Layer: b.Layer && !began.Layer, Tube: b.Tube && !began.Tube}
		if is.Layer || is.Tube {
			q, _ := s.Point(n)
			b.Layer, b.Tube, b.Centre = is.Layer, is.Tube, false
			out = append(out, s.says(n, b, q, sys))
		}
		began.Layer, began.Tube = began.Layer || b.Layer, began.Tube || b.Tube
	}
	if s.Ends != "" {
		out = append(out, s.Ends+".")
	}
	return out
}

// Comes says what begins with a count; "" where nothing does, or where it is not known.
func (s *Strip) Comes(n int, sys unit.System) string {
	b := s.Begins(n)
	if !b.Layer && !b.Tube && !b.Thick && !b.Thin {
		return ""
	}
	return s.says(n, b, s.points[n-s.Least], sys)
}

// says is what begins with the nth: "The 24th starts a new layer: OD 12.4 mm and the next tube, 1/2."
func (s *Strip) says(n int, b Begins, p Point, sys unit.System) string {
	tube := "the next tube, " + size(p.Tube.ShelfLabel)
	switch {
	case p.Tube.ID == "":
		tube = "no tube that holds"
	case b.First:
		tube = "tube " + size(p.Tube.ShelfLabel)
	}
	does := ""
	switch {
	case b.Layer:
		does = "starts a new layer"
	case b.Built && b.Thick:
		does = "needs a built-up centre"
	case b.Centre && b.Thick:
		does = "needs a centre of " + fmt.Sprint(p.Centre())
	case b.Thick:
		does = "makes it thicker"
	case b.Thin:
		does = "makes it thinner"
	case b.Tube && p.Tube.ID == "":
		return fmt.Sprintf("With the %s no tube holds any more.", s.nth(n))
	default:
		return fmt.Sprintf("The %s needs %s.", s.nth(n), tube)
	}
	text := fmt.Sprintf("The %s %s: OD %s", s.nth(n), does, p.od(sys))
	if b.Tube {
		text += " and " + tube
	}
	return text + "."
}

// fewer is the first count below that is thinner, or takes another tube.
func (s *Strip) fewer(now Point, sys unit.System) []string {
	for n := s.Now - 1; n >= s.Least; n-- {
		p, ok := s.Point(n)
		if !ok {
			return nil
		}
		if p.Branch == nil || p.shown() == now.shown() && p.Tube.ID == now.Tube.ID {
			continue
		}
		b := between(p, now)
		text := fmt.Sprintf("With %d fewer it is %s", s.Now-n, p.od(sys))
		switch {
		case p.shown() == now.shown():
			text = fmt.Sprintf("With %d fewer it has the same OD", s.Now-n)
		case b.Layer:
			text += ", a layer less"
		}
		switch {
		case b.Tube && p.Tube.ID == "":
			text += ", and no tube holds"
		case b.Tube:
			text += ", in tube " + size(p.Tube.ShelfLabel)
		}
		return []string{text + "."}
	}
	return nil
}

// odd is where fewer come out thicker than more, nearest to the present count.
func (s *Strip) odd(sys unit.System) []string {
	best := 0
	for n := s.Least; n <= s.Most; n++ {
		if as, _ := s.Fillable(n); as > 0 && (best == 0 || near(n, s.Now) < near(best, s.Now)) {
			best = n
		}
	}
	if best == 0 {
		return nil
	}
	return []string{s.Odd(best, sys)}
}

// Odd says of a count that comes out thicker than a greater one what can be done; "" of the others.
func (s *Strip) Odd(n int, sys unit.System) string {
	as, fillers := s.Fillable(n)
	if as == 0 {
		return ""
	}
	p, q := s.points[n-s.Least], s.points[as-s.Least]
	text := fmt.Sprintf("%s come out thicker than %d: %s against %s.", s.count(n), as, p.od(sys), q.od(sys))
	if n == 1 {
		text = strings.Replace(text, " come ", " comes ", 1)
	}
	if fillers {
		text += fmt.Sprintf(" With %s more, %d %s as thin as %d.", plural(as-n, "filler", "fillers"), n, isAre(n), as)
	}
	return text
}

func near(a, b int) int { return max(a-b, b-a) }

func isAre(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

// count is so many of what is counted, for the beginning of a sentence: "23 wires of size 22".
func (s *Strip) count(n int) string {
	if s.What == Spares {
		return plural(n, "spare", "spares")
	}
	return plural(n, "wire", "wires") + " of size " + s.Size
}

func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// nth is a number in order: "24th", "1st spare".
func (s *Strip) nth(n int) string {
	end := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			end = "st"
		case 2:
			end = "nd"
		case 3:
			end = "rd"
		}
	}
	text := fmt.Sprintf("%d%s", n, end)
	if s.What == Spares {
		text += " spare"
	}
	return text
}
