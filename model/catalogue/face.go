package catalogue

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Face is where the cavities of an arrangement lie, on the front of its pin insert: to show and
// to find a cavity on it, never to measure. The unit is how far the outermost cavity lies from
// the centre; x runs to the right, y up. Where the keyway points is not known.
type Face struct {
	ID     string // a name of the arrangement
	Rim    float64
	Places []Place // each cavity once
	Doubt  string  // why it is not shown; "" where nothing speaks against it
	Origin
}

// Place is where a cavity lies on a face.
type Place struct {
	Cavity string
	X, Y   float64
}

// Side is which side of which insert a face is seen from.
type Side struct {
	Socket bool // a socket insert; otherwise a pin insert
	Front  bool // the mating side; otherwise the rear, where the wires go in
}

// Seen is the face as it is seen from a side. The front of the pin insert and the rear of the
// socket insert that mates with it look the same; the other two are its mirror image.
func (f Face) Seen(s Side) Face {
	if s.Socket != s.Front {
		return f
	}
	f.Places = slices.Clone(f.Places)
	for k := range f.Places {
		f.Places[k].X = 0 - f.Places[k].X // no -0
	}
	return f
}

// Face is the face of an arrangement by any of its names, in the order of its cavities. why says
// what is missing where there is none to show.
func (c *Catalogue) Face(name string) (f Face, why string) {
	i, ok := c.Insert(name)
	if !ok {
		return Face{}, fmt.Sprintf("insert %q is in no catalogue", name)
	}
	known := false
	for _, n := range i.Names() {
		if f, known = c.Faces[n]; known {
			break
		}
	}
	switch {
	case !known:
		return Face{}, "no face is known for " + i.ID
	case f.Doubt != "":
		return Face{}, "the face of " + i.ID + " is not shown: " + f.Doubt
	}
	at := map[string]Place{}
	for _, p := range f.Places {
		at[p.Cavity] = p
	}
	places := make([]Place, 0, len(i.Cavities))
	for _, cavity := range i.Cavities {
		p, there := at[cavity]
		if !there || len(f.Places) != len(i.Cavities) {
			return Face{}, "the face of " + i.ID + " is not shown: it has other cavities than the catalogue gives " + i.ID
		}
		places = append(places, p)
	}
	f.Places = places
	return f, ""
}

// What the figures of a face may be, in its own unit.
var (
	placeSpan = span{-1.5, 1.5}
	rimSpan   = span{1, 10}
)

func (b *builder) face(e *entry) {
	f := Face{
		ID:     e.text("id", true),
		Rim:    e.number("rim", true, rimSpan),
		Doubt:  e.text("doubt", false),
		Origin: e.origin(),
	}
	const key, allowed = "cavities", `a name and two numbers from -1.5 to 1.5 for each, ["A 0.25 -0.75"]`
	named := map[string]bool{}
	texts := e.list(key)
	if _, given := e.vals[key]; !given {
		e.wrong(key, "it is missing", allowed)
	}
	for _, text := range texts {
		p, ok := placeOf(text)
		switch {
		case !ok:
			e.wrong(key, shown(text)+" is no place of a cavity", allowed)
		case named[p.Cavity]:
			e.wrong(key, fmt.Sprintf("cavity %q has two places", p.Cavity), "each cavity once")
		}
		named[p.Cavity] = true
		f.Places = append(f.Places, p)
	}
	b.claim(e, "face", "id", f.ID)
	b.c.Faces[f.ID] = f
}

// placeOf reads "A 0.25 -0.75".
func placeOf(text string) (Place, bool) {
	part := strings.Split(text, " ")
	if len(part) != 3 || part[0] == "" {
		return Place{}, false
	}
	x, err1 := strconv.ParseFloat(part[1], 64)
	y, err2 := strconv.ParseFloat(part[2], 64)
	in := func(v float64) bool { return v >= placeSpan.lo && v <= placeSpan.hi } // not NaN either
	if err1 != nil || err2 != nil || !in(x) || !in(y) {
		return Place{}, false
	}
	return Place{Cavity: part[0], X: x, Y: y}, true
}

// Qualified says in which of the series that an arrangement exists in it is not
// military-qualified: none of them, some, or all.
func (i Insert) Qualified() (all bool, says string) {
	switch both := len(i.Aliases) > 0; {
	case len(i.NotQualified) == 0:
		return true, ""
	case len(i.NotQualified) > 1 || !both:
		return false, "not military-qualified"
	}
	return false, "not military-qualified in series " + i.NotQualified[0]
}
