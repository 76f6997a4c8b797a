package compare

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/model/unit"
	"contralay/model/wirelist/value"
)

// lengths compares what two lists say of the lengths of their wires. Wires between the same
// connectors that changed alike are told together.
func (c *comparer) lengths(pairs []pair) {
	if !c.first.Gives("length", len(c.first.Lengths) > 0) || !c.second.Gives("length", len(c.second.Lengths) > 0) || c.first.Whole ||
		c.second.Whole {
		return
	}
	const alike = 0.5 // mm: what is left of a length said in another unit
	type way struct{ between, was, is string }
	of := map[way][]pair{}
	var order []way
	for _, p := range pairs {
		a, given := c.first.Lengths[p.was.wire.ID]
		b, still := c.second.Lengths[p.is.wire.ID]
		if given && still && math.Abs(float64(a-b)) <= alike {
			continue
		}
		w := way{termination(p.was.one) + " " + termination(p.was.two), c.first.OrNoted(p.was.wire, millimetres(a, given), "length"),
			c.second.OrNoted(p.is.wire, millimetres(b, still), "length")}
		if w.was == w.is {
			continue
		}
		if of[w] == nil {
			order = append(order, w)
		}
		of[w] = append(of[w], p)
	}
	for _, w := range order {
		var wires []string
		for _, p := range of[w] {
			wires = append(wires, p.was.wire.ID)
		}
		first := of[w][0].was
		d := Difference{Kind: Changed, Of: "wire", Wires: wires, Cavities: first.list(), What: "length", Was: w.was, Is: w.is}
		name := c.called(first)
		if len(wires) > 1 {
			var ends []string
			for _, e := range first.list() {
				ends = append(ends, termination(e))
			}
			name = "wires " + strings.Join(wires, ", ") + " " + strings.Join(slices.Compact(ends), " to ")
			d.Cavities = nil
		}
		d.Says = fmt.Sprintf("%s: length is %s, was %s", name, quoted(w.is), quoted(w.was))
		c.say(d)
	}
}

// millimetres is a length to a tenth, "" where there is none.
func millimetres(mm unit.Millimetre, given bool) string {
	if !given {
		return ""
	}
	return value.FormatLength(unit.Millimetre(math.Round(float64(mm)*10) / 10))
}
