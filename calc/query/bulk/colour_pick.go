package bulk

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/formula/hue"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/wirelist/value"
)

// Colours for wires. No habit of which colour a ground or a supply has is kept: of the published
// systems none was read that says so for a harness (MIL-STD-681 is known by its titles alone).

// ColourAsk asks for colours.
type ColourAsk struct {
	Wires []string // none: all of the harness
	Stock []string // codes, the first is taken first; none: the shop's
	Again bool     // those that have a colour get another, too
}

// Coloured is the harness with the colours that are proposed.
type Coloured struct {
	H       *model.Harness
	Wires   []string // that got a colour, in the order of the harness
	Colours []string // theirs
	Kept    int      // wires that had a colour and keep it
	Lacks   []Lack
}

// Lack is a connector or a layer in which the wires cannot be told apart as they should.
type Lack struct {
	Connector string   // "" for a layer
	Branch    string   // of a layer
	Layer     int      // of a layer, 0 the centre
	Colours   int      // that the stock would need more; 0 where no colour more would do
	Wires     []string // that are alike, or got none
	Says      string
}

// steps bounds each search: some tens of milliseconds.
const steps = 20_000

// Colours proposes colours for wires: in no connector are two alike, and every layer has a tracer,
// a colour that no other of its pieces has. A colour that somebody gave is kept unless the ask is
// for all again. Where the stock is too small for a connector, as many of its wires as can be are
// coloured, the others get none, and the answer says how many colours lack; a layer that gets no
// tracer is named too. The same ask has the same answer.
func Colours(s *sheet.Sheet, ask ColourAsk) (Coloured, error) {
	all := ask.Wires
	if len(all) == 0 {
		for k := range s.H.Wires {
			all = append(all, s.H.Wires[k].ID)
		}
	}
	at, err := picked(s, all)
	if err != nil {
		return Coloured{}, err
	}
	c := newPalette(s, ask, at)
	if len(c.codes) == 0 {
		return Coloured{}, fmt.Errorf("no colour is in stock: give colour_stock in [rules], or leave it out")
	}
	c.meet()
	c.layers()
	out := Coloured{H: s.H, Kept: len(at) - len(c.free)}
	got, short := c.solve()
	var change []int
	code := map[string]string{}
	for n, k := range c.free {
		w := &s.H.Wires[k]
		if got[n] < len(c.codes) {
			code[w.ID] = c.codes[got[n]]
		}
		switch {
		case w.Colour.V == code[w.ID]:
			if w.Colour.V != "" {
				out.Kept++
			}
			continue
		case code[w.ID] != "":
			out.Wires, out.Colours = append(out.Wires, w.ID), append(out.Colours, code[w.ID])
		}
		change = append(change, k)
	}
	if len(change) > 0 {
		out.H = s.H.EditWires(change, func(w *model.Wire) {
			if w.Colour = (model.Opt[string]{}); code[w.ID] != "" {
				w.Colour = model.Some(code[w.ID])
			}
		})
	}
	out.Lacks = c.lacks(got, short)
	return out, nil
}

// Text says what was coloured, and then what lacks.
func (c *Coloured) Text() string {
	says := "no wire gets a colour"
	if n := len(c.Wires); n > 0 {
		says = count(n, "wire") + " coloured"
	}
	if c.Kept > 0 {
		says += fmt.Sprintf(", %d keep theirs", c.Kept)
	}
	for _, l := range c.Lacks {
		says += ". " + l.Says
	}
	return says
}

// palette is a question of colours as it comes together: wires by their place in free, colours by
// their place in codes.
type palette struct {
	s     *sheet.Sheet
	at    []int // wires that are asked about
	free  []int // those of them that get a colour
	place map[int]int
	codes []string // of the stock
	known map[string]int

	ask    hue.Ask
	joints []joint
	rings  []ring
	least  int // colours that some connector lacks for certain
	unlaid []string
}

// joint is a connector and the wires that it lacks colours for.
type joint struct {
	term  int
	free  []int   // places in free
	lack  int     // for certain
	alike [][]int // wires that were given one colour
}

// ring is a layer that needs a tracer.
type ring struct {
	branch, layer int
	hue.Ring
	barren bool // no colour of the stock would make one
}

// keyOf is a colour whatever code it is written in: "WHBU" and "96" are one.
func keyOf(code string) string {
	c, ok := value.ParseColour(code, "")
	if !ok {
		return strings.ToLower(strings.TrimSpace(code))
	}
	return c.String()
}

func newPalette(s *sheet.Sheet, ask ColourAsk, at []int) *palette {
	c := &palette{s: s, at: at, place: map[int]int{}, known: map[string]int{}}
	stock := ask.Stock
	if len(stock) == 0 {
		stock = s.Limits.ColourStock
	}
	for _, code := range stock {
		key := keyOf(code)
		if _, twice := c.known[key]; !twice && key != "" {
			c.known[key] = len(c.codes)
			c.codes = append(c.codes, code)
		}
	}
	for _, k := range at {
		if ask.Again || s.H.Wires[k].Colour.V == "" {
			c.place[k] = len(c.free)
			c.free = append(c.free, k)
		}
	}
	c.ask = hue.Ask{Wires: len(c.free), Colours: len(c.codes), Barred: make([][]int, len(c.free))}
	return c
}

// given is the colour that a wire has and keeps; "" for none.
func (c *palette) given(k int) string {
	if _, free := c.place[k]; free {
		return ""
	}
	return keyOf(c.s.H.Wires[k].Colour.V)
}

// meet keeps apart what meets in a connector. Wires of one cavity are one to the device.
func (c *palette) meet() {
	for t := range c.s.Terms {
		j := joint{term: t}
		var cavities [][]int
		asked := false
		for _, name := range c.s.Terms[t].Cavities {
			var here []int
			for _, id := range c.s.Terms[t].State[name].Wires {
				k := c.s.Index.Wire[id]
				here = append(here, k)
				asked = asked || slices.Contains(c.at, k)
			}
			cavities = append(cavities, here)
		}
		if !asked {
			continue
		}
		c.keepApart(&j, cavities)
		if c.least = max(c.least, j.lack); len(j.free) > 0 || len(j.alike) > 0 {
			c.joints = append(c.joints, j)
		}
	}
}

// keepApart keeps the wires of different cavities apart, and counts how many colours they need.
func (c *palette) keepApart(j *joint, cavities [][]int) {
	needs, gone := 0, map[int]bool{}
	for n, here := range cavities {
		wants := false
		for _, k := range here {
			w, free := c.place[k]
			if free {
				wants = true
				if !slices.Contains(j.free, w) {
					j.free = append(j.free, w)
				}
			}
			for _, there := range cavities[:n] {
				for _, other := range there {
					c.pair(j, k, other)
				}
			}
		}
		if wants {
			needs++
			continue
		}
		for _, k := range here {
			if code, is := c.known[c.given(k)]; is {
				gone[code] = true
			}
		}
	}
	j.lack = max(0, needs-(len(c.codes)-len(gone)))
}

// pair keeps two wires apart, or notes that they were given one colour.
func (c *palette) pair(j *joint, a, b int) {
	p, freeA := c.place[a]
	q, freeB := c.place[b]
	switch {
	case a == b:
	case freeA && freeB:
		c.ask.Apart = append(c.ask.Apart, [2]int{q, p})
	case freeA:
		c.bar(p, c.given(b))
	case freeB:
		c.bar(q, c.given(a))
	case c.given(a) != "" && c.given(a) == c.given(b):
		j.alike = append(j.alike, []int{b, a})
	}
}

func (c *palette) bar(w int, colour string) {
	if code, is := c.known[colour]; is && !slices.Contains(c.ask.Barred[w], code) {
		c.ask.Barred[w] = append(c.ask.Barred[w], code)
	}
}
