package bench

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/calc"
	"contralay/model/unit"
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

// look goes on to the next way of drawing the section: by size, by role, by where
// it leaves, then a closer look at what is round the row in hand.
func (m *Model) look() {
	switch {
	case m.zoom:
		m.zoom, m.by = false, bySize
	case m.by+1 == colourings:
		m.zoom, m.by = true, bySize
	default:
		m.by++
	}
	if m.zoom {
		m.tell("section: the part round the row in hand")
		return
	}
	m.tell("section: whole, by " + m.by.String())
}

// classes gives each component of the branch its class and each class its name, in
// the order they are met from the centre outward; sizes from thin to thick.
func (m *Model) classes(b *calc.Branch) (of func(c calc.Member) int, names []string) {
	step := 1
	if m.by == byHeat {
		step = m.heatStep(b)
	}
	name := func(c calc.Member) string {
		if m.by == byHeat {
			return m.heatBand(c.ID, step)
		}
		return m.className(c)
	}
	var keys []string
	var ds []unit.Millimetre
	for _, l := range b.Layers {
		for _, c := range l.Members {
			if n := name(c); c.Kind != calc.OfFiller && !slices.Contains(keys, n) {
				keys, ds = append(keys, n), append(ds, c.D)
			}
		}
	}
	if m.by == byHeat { // from cool to hot
		slices.SortFunc(keys, func(a, b string) int { return cmp.Or(cmp.Compare(len(a), len(b)), cmp.Compare(a, b)) })
	}
	if m.by == bySize {
		order := make([]int, len(keys))
		for k := range order {
			order[k] = k
		}
		slices.SortStableFunc(order, func(a, z int) int {
			if ds[a] < ds[z] {
				return -1
			}
			return map[bool]int{true: 1}[ds[a] > ds[z]]
		})
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
	return func(c calc.Member) int {
		return min(max(0, slices.Index(keys, name(c))), draw.Classes-1)
	}, names
}

// heatStep is how many degrees one colour of the section stands for: few enough that
// a branch's own range shows, and no more colours than can be told apart.
func (m *Model) heatStep(b *calc.Branch) int {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, l := range b.Layers {
		for _, c := range l.Members {
			if t, ok := m.sheet.ConductorC(m.branch, c.ID); ok {
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
func (m *Model) heatBand(id string, step int) string {
	t, ok := m.sheet.ConductorC(m.branch, id)
	if !ok {
		return "-"
	}
	return fmt.Sprintf("%d C", int(math.Floor(float64(t)/float64(step)))*step)
}

// className is what a component is told apart by.
func (m *Model) className(c calc.Member) string {
	w, isWire := m.sheet.X.Wire[c.ID]
	u, isUnit := m.sheet.X.Unit[c.ID]
	switch {
	case m.by == byLeaving:
		return m.sheet.NextAfter(m.branch, c.ID)
	case m.by == byRole && isWire:
		return orDash(m.h.Wires[w].Role.V)
	case m.by == byRole && isUnit:
		for _, id := range m.h.Units[u].Wires {
			if k, ok := m.sheet.X.Wire[id]; ok {
				return orDash(m.h.Wires[k].Role.V)
			}
		}
		return "-"
	case isWire:
		return paper.Size(&m.h.Wires[w])
	}
	return m.sys.Diameter(c.D) + " " + m.sys.Name()
}

// classMark is what marks a class where there is no colour: a digit that rises with the
// temperature, a letter for what has no order.
func (m *Model) classMark(class int) string {
	if m.by == byHeat {
		return strconv.Itoa(class%draw.Classes + 1)
	}
	return draw.ClassLetter(class)
}

// legendLines is how many lines a key may take.
const legendLines = 2

// legend is the key of the classes, in lines of exactly w cells; none where nothing
// needs one: by size, without colour, the map shows ids alone.
func (m *Model) legend(names []string, w int) []string {
	colour := m.cfg.Palette.Colour
	if m.by == bySize && !colour {
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
		word := m.plain(" " + n + " ")
		if !colour {
			word = m.plain(m.classMark(k) + " " + n)
		}
		word = draw.Cut(word, w, m.cfg.ASCII)
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
			word = string(m.cfg.Palette.AppendSGR(nil, draw.ClassStyle(k))) + word + "\x1b[0m"
		}
		line += sep + word
	}
	if end(); len(out) > legendLines {
		return out[:legendLines]
	}
	return out
}
