package cross

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/current"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/draw"
)

// By is what the colours of a section tell apart. The zero value is the insulation of each wire.
type By int

// What colours tell apart, in the order in which a key goes on.
const (
	ByColour By = iota
	ByDestination
	BySize
	ByRole
	ByTemperature
	ByTightness
	End
)

// Names are all of them in words, as a command takes them.
func Names() []string {
	return []string{"wire colour", "destination", "size", "role", "temperature", "tightness"}
}

// String is what the colours tell apart, in words.
func (b By) String() string {
	if b < 0 || b >= End {
		return "-"
	}
	return Names()[b]
}

// Find is the way of this name; "colour" is enough for that of the wire.
func Find(name string) (By, bool) {
	if name == "colour" || name == "color" {
		return ByColour, true
	}
	at := slices.Index(Names(), name)
	return By(at), at >= 0
}

// Classes are what a way of colouring tells apart.
type Classes struct {
	Names []string // in the order of the classes
	of    func(layer int, c sheet.Member) string
}

// Of is the class of a member of a layer.
func (c *Classes) Of(layer int, m sheet.Member) int {
	return min(max(0, slices.Index(c.Names, c.of(layer, m))), draw.Classes-1)
}

// Mark is what stands for a class where there is no colour: a digit that rises with what has an
// order, else a letter.
func (b By) Mark(class int) string {
	if b == ByTemperature || b == ByTightness {
		return strconv.Itoa(class%draw.Classes + 1)
	}
	return draw.ClassLetter(class)
}

// Paint gives the discs of a section their classes, and returns them. By insulation there are none.
func Paint(s *sheet.Sheet, branch int, out *draw.Section, by By, sys unit.System) []string {
	if by == ByColour {
		return nil
	}
	c := ClassesOf(s, branch, by, sys)
	out.ByClass = true
	i := 0
	for k, l := range s.Branches[branch].Layers {
		for _, member := range l.Members {
			out.Discs[i].Class = c.Of(k, member)
			i++
		}
	}
	return c.Names
}

// ClassesOf gives each piece of a branch its class and each class its name, in the order in which
// they are met from the centre outward; sizes from thin to thick, temperatures from cool to hot,
// layers from easy to what will not close.
func ClassesOf(s *sheet.Sheet, branch int, by By, sys unit.System) *Classes {
	b := &s.Branches[branch]
	step := 1
	if by == ByTemperature {
		step = heatStep(s, branch)
	}
	out := &Classes{of: func(layer int, c sheet.Member) string {
		switch by {
		case ByTemperature:
			return heatBand(s, branch, c.ID, step)
		case ByTightness:
			return tightness(s, b, layer)
		case ByDestination:
			return bundle.NextAfter(s, branch, c.ID)
		case ByRole:
			return role(s, c.ID)
		}
		return size(s, c, sys)
	}}
	var diameters []unit.Millimetre
	for k, l := range b.Layers {
		for _, c := range l.Members {
			if n := out.of(k, c); c.Kind != sheet.OfFiller && !slices.Contains(out.Names, n) {
				out.Names, diameters = append(out.Names, n), append(diameters, c.D)
			}
		}
	}
	switch by {
	case ByTemperature:
		slices.SortFunc(out.Names, func(a, b string) int { return cmp.Or(cmp.Compare(len(a), len(b)), cmp.Compare(a, b)) })
	case ByTightness:
		slices.SortFunc(out.Names, func(a, b string) int {
			return cmp.Compare(slices.Index(tightNames[:], a), slices.Index(tightNames[:], b))
		})
	case BySize:
		out.Names = sorted(out.Names, diameters)
	}
	if len(out.Names) > draw.Classes { // the last class is all the rest
		out.Names = append(slices.Clone(out.Names[:draw.Classes-1]), "others")
	}
	return out
}

// sorted is names in the order of their diameters.
func sorted(names []string, diameters []unit.Millimetre) []string {
	order := make([]int, len(names))
	for k := range order {
		order[k] = k
	}
	slices.SortStableFunc(order, func(a, z int) int { return cmp.Compare(diameters[a], diameters[z]) })
	out := make([]string, len(names))
	for k, at := range order {
		out[k] = names[at]
	}
	return out
}

// heatStep is how many degrees one colour stands for: few enough that a branch's own range shows,
// and no more colours than can be told apart.
func heatStep(s *sheet.Sheet, branch int) int {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, l := range s.Branches[branch].Layers {
		for _, c := range l.Members {
			if t, ok := current.ConductorC(s, branch, c.ID); ok {
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

// heatBand is the temperature of a component's hottest conductor in this branch, in steps.
func heatBand(s *sheet.Sheet, branch int, id string, step int) string {
	t, ok := current.ConductorC(s, branch, id)
	if !ok {
		return "-"
	}
	return fmt.Sprintf("%d C", int(math.Floor(float64(t)/float64(step)))*step)
}

// tightNames are how a layer lies, from the easiest.
var tightNames = [...]string{"centre", "has room", "closes easily", "tight", "will not close"}

// tightness is how a layer lies.
func tightness(s *sheet.Sheet, b *sheet.Branch, layer int) string {
	l := &b.Layers[layer]
	switch {
	case layer == 0:
		return tightNames[0]
	case !l.Closes || l.Lift > s.Limits.LiftTight:
		return tightNames[4]
	case l.Lift > s.Limits.LiftMax:
		return tightNames[3]
	case l.Room > 0:
		return tightNames[1]
	}
	return tightNames[2]
}

// role is the role of a wire, or of the first wire of a unit.
func role(s *sheet.Sheet, id string) string {
	of := func(id string) string {
		if k, ok := s.Index.Wire[id]; ok {
			return cmp.Or(string(s.H.Wires[k].Role.V), "-")
		}
		return "-"
	}
	if u, ok := s.Index.Unit[id]; ok {
		for _, wire := range s.H.Units[u].Wires {
			return of(wire)
		}
	}
	return of(id)
}

// size is the size of a wire, or the diameter of anything else.
func size(s *sheet.Sheet, c sheet.Member, sys unit.System) string {
	if w, is := s.Index.Wire[c.ID]; is {
		return model.SizeWords(s.H.Wires[w].Size)
	}
	return sys.Diameter(c.D) + " " + sys.Name()
}
