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

const (
	bySize desk.Colouring = iota
	byRole
	byLeaving
	ByHeat
	colourings
)

func String(c desk.Colouring) string {
	return [colourings]string{"size", "role", "where it leaves", "temperature"}[c]
}

// Look goes on to the next way of drawing the section: by size, by role, by where
// it leaves, then a closer look at what is round the row in hand.
func Look(m *desk.Model) {
	switch {
	case m.Zoom:
		m.Zoom, m.By = false, bySize
	case m.By+1 == colourings:
		m.Zoom, m.By = true, bySize
	default:
		m.By++
	}
	if m.Zoom {
		m.Tell("section: the part round the row in hand")
		return
	}
	m.Tell("section: whole, by " + String(m.By))
}

// Classes gives each component of the branch its class and each class its name, in
// the order they are met from the centre outward; sizes from thin to thick.
func Classes(m *desk.Model, b *sheet.Branch) (of func(c sheet.Member) int, names []string) {
	step := 1
	if m.By == ByHeat {
		step = HeatStep(m, b)
	}
	name := func(c sheet.Member) string {
		if m.By == ByHeat {
			return HeatBand(m, c.ID, step)
		}
		return ClassName(m, c)
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
	if m.By == ByHeat { // from cool to hot
		slices.SortFunc(keys, func(a, b string) int { return cmp.Or(cmp.Compare(len(a), len(b)), cmp.Compare(a, b)) })
	}
	if m.By == bySize {
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
	return func(c sheet.Member) int {
		return min(max(0, slices.Index(keys, name(c))), draw.Classes-1)
	}, names
}

// HeatStep is how many degrees one colour of the section stands for: few enough that
// a branch's own range shows, and no more colours than can be told apart.
func HeatStep(m *desk.Model, b *sheet.Branch) int {
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

// HeatBand is the temperature of a component's hottest conductor in this branch, in
// steps.
func HeatBand(m *desk.Model, id string, step int) string {
	t, ok := current.ConductorC(m.Sheet, m.Branch, id)
	if !ok {
		return "-"
	}
	return fmt.Sprintf("%d C", int(math.Floor(float64(t)/float64(step)))*step)
}

// ClassName is what a component is told apart by.
func ClassName(m *desk.Model, c sheet.Member) string {
	w, isWire := m.Sheet.X.Wire[c.ID]
	u, isUnit := m.Sheet.X.Unit[c.ID]
	switch {
	case m.By == byLeaving:
		return bundle.NextAfter(m.Sheet, m.Branch, c.ID)
	case m.By == byRole && isWire:
		return words.OrDash(string(m.H.Wires[w].Role.V))
	case m.By == byRole && isUnit:
		for _, id := range m.H.Units[u].Wires {
			if k, ok := m.Sheet.X.Wire[id]; ok {
				return words.OrDash(string(m.H.Wires[k].Role.V))
			}
		}
		return "-"
	case isWire:
		return paper.Size(&m.H.Wires[w])
	}
	return m.Sys.Diameter(c.D) + " " + m.Sys.Name()
}

// ClassMark is what marks a class where there is no colour: a digit that rises with the
// temperature, a letter for what has no order.
func ClassMark(m *desk.Model, class int) string {
	if m.By == ByHeat {
		return strconv.Itoa(class%draw.Classes + 1)
	}
	return draw.ClassLetter(class)
}

// legendLines is how many lines a key may take.
const legendLines = 2

// Legend is the key of the classes, in lines of exactly w cells; none where nothing
// needs one: by size, without colour, the map shows ids alone.
func Legend(m *desk.Model, names []string, w int) []string {
	colour := m.Cfg.Palette.Colour
	if m.By == bySize && !colour {
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
		word := Plain(m, " "+n+" ")
		if !colour {
			word = Plain(m, ClassMark(m, k)+" "+n)
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
			word = string(m.Cfg.Palette.AppendSGR(nil, draw.ClassStyle(k))) + word + "\x1b[0m"
		}
		line += sep + word
	}
	if end(); len(out) > legendLines {
		return out[:legendLines]
	}
	return out
}
