package bench

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/current"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// colouring is what the colours of the section tell apart. Without colour, letters
// do: a to h, with a key under the section; temperature has digits, which rise with it.
type colouring int

const (
	bySize colouring = iota
	byRole
	byLeaving
	byHeat
	colourings
)

func (c colouring) String() string {
	return [colourings]string{"size", "role", "where it leaves", "temperature"}[c]
}

// section is how the section is drawn.
type section struct {
	zoom bool // the part round the row in hand
	by   colouring
}

func sectionOf(m *desk.Model) *section { return desk.State[section](m) }

// wholeSection draws the whole section again: another branch is taken in hand.
func wholeSection(m *desk.Model) { sectionOf(m).zoom = false }

// look goes on to the next way of drawing the section: by size, by role, by where
// it leaves, then a closer look at what is round the row in hand.
func look(m *desk.Model) {
	s := sectionOf(m)
	switch {
	case s.zoom:
		s.zoom, s.by = false, bySize
	case s.by+1 == colourings:
		s.zoom, s.by = true, bySize
	default:
		s.by++
	}
	if s.zoom {
		m.Tell("section: closer round the row you are on")
		return
	}
	m.Tell("section: whole, by " + s.by.String())
}

// classes gives each component of the branch its class and each class its name, in
// the order they are met from the centre outward; sizes from thin to thick.
func classes(m *desk.Model, b *sheet.Branch) (of func(c sheet.Member) int, names []string) {
	step := 1
	if sectionOf(m).by == byHeat {
		step = heatStep(m, b)
	}
	name := func(c sheet.Member) string {
		if sectionOf(m).by == byHeat {
			return heatBand(m, c.ID, step)
		}
		return className(m, c)
	}
	var keys []string
	var ds []unit.Millimetre
	for _, l := range b.Layers {
		for _, c := range l.Members {
			if n := name(c); c.Kind != sheet.OfFiller && !slices.Contains(keys, n) {
				keys, ds = append(keys, n), append(ds, c.D)
			}
		}
	}
	if sectionOf(m).by == byHeat { // from cool to hot
		slices.SortFunc(keys, func(a, b string) int { return cmp.Or(cmp.Compare(len(a), len(b)), cmp.Compare(a, b)) })
	}
	if sectionOf(m).by == bySize {
		order := make([]int, len(keys))
		for k := range order {
			order[k] = k
		}
		slices.SortStableFunc(order, func(a, z int) int { return cmp.Compare(ds[a], ds[z]) })
		sorted := make([]string, len(keys))
		for k, at := range order {
			sorted[k] = keys[at]
		}
		keys = sorted
	}
	if len(keys) > draw.Classes { // the last class is all the rest
		names = append(slices.Clone(keys[:draw.Classes-1]), "others")
	} else {
		names = keys
	}
	return func(c sheet.Member) int {
		return min(max(0, slices.Index(keys, name(c))), draw.Classes-1)
	}, names
}

// heatStep is how many degrees one colour of the section stands for: few enough that
// a branch's own range shows, and no more colours than can be told apart.
func heatStep(m *desk.Model, b *sheet.Branch) int {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, l := range b.Layers {
		for _, c := range l.Members {
			if t, ok := current.ConductorC(m.Sheet, m.Branch, c.ID); ok {
				lo, hi = math.Min(lo, float64(t)), math.Max(hi, float64(t))
			}
		}
	}
	for _, step := range []int{1, 2, 5, 10, 20} {
		if hi-lo <= float64(step*(draw.Classes-2)) {
			return step
		}
	}
	return 50
}

// heatBand is the temperature of a component's hottest conductor in this branch, in
// steps.
func heatBand(m *desk.Model, id string, step int) string {
	t, ok := current.ConductorC(m.Sheet, m.Branch, id)
	if !ok {
		return "-"
	}
	return fmt.Sprintf("%d C", int(math.Floor(float64(t)/float64(step)))*step)
}

// className is what a component is told apart by.
func className(m *desk.Model, c sheet.Member) string {
	w, isWire := m.Sheet.Index.Wire[c.ID]
	u, isUnit := m.Sheet.Index.Unit[c.ID]
	switch {
	case sectionOf(m).by == byLeaving:
		return bundle.NextAfter(m.Sheet, m.Branch, c.ID)
	case sectionOf(m).by == byRole && isWire:
		return words.OrDash(string(m.H.Wires[w].Role.V))
	case sectionOf(m).by == byRole && isUnit:
		for _, id := range m.H.Units[u].Wires {
			if k, ok := m.Sheet.Index.Wire[id]; ok {
				return words.OrDash(string(m.H.Wires[k].Role.V))
			}
		}
		return "-"
	case isWire:
		return paper.Size(&m.H.Wires[w])
	}
	return m.Sys.Diameter(c.D) + " " + m.Sys.Name()
}

// classMark is what marks a class where there is no colour: a digit that rises with the
// temperature, a letter for what has no order.
func classMark(m *desk.Model, class int) string {
	if sectionOf(m).by == byHeat {
		return strconv.Itoa(class%draw.Classes + 1)
	}
	return draw.ClassLetter(class)
}

// legendLines is how many lines a key may take.
const legendLines = 2

// legend is the key of the classes, in lines of exactly w cells; none where nothing
// needs one: by size, without colour, the map shows ids alone.
func legend(m *desk.Model, names []string, w int) []string {
	colour := m.Cfg.Palette.Colour
	if sectionOf(m).by == bySize && !colour {
		return nil
	}
	var out []string
	plain, line := "", ""
	end := func() {
		left := (w - draw.Width(plain)) / 2
		out = append(out, strings.Repeat(" ", left)+line+strings.Repeat(" ", w-left-draw.Width(plain)))
		plain, line = "", ""
	}
	for k, n := range names {
		word := m.Theme.Plain(" " + n + " ")
		if !colour {
			word = m.Theme.Plain(classMark(m, k) + " " + n)
		}
		word = draw.Cut(word, w, m.Cfg.ASCII)
		sep := "  "
		if plain != "" && draw.Width(plain+sep+word) > w {
			if end(); len(out) == legendLines {
				return out
			}
		}
		if plain == "" {
			sep = ""
		}
		plain += sep + word
		if colour {
			word = m.Cfg.Palette.Paint(draw.ClassStyle(k), word)
		}
		line += sep + word
	}
	if end(); len(out) > legendLines {
		return out[:legendLines]
	}
	return out
}
