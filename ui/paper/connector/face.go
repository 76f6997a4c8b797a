package connector

import (
	"fmt"
	"html/template"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/face"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/svg"
)

// The face of a connector, from the wire side.

// faceOf is the face of a termination as a pinner sees it; why says in a sentence why there is none to show.
func faceOf(m list.Maker, t int, pins []Pin) (f face.Face, why string) {
	e := &m.H.Terminations[t]
	insert, known := m.S.Cat.Insert(e.Insert.V)
	if !known {
		return f, "No face is drawn: the catalogue has no insert for it."
	}
	places, why := m.S.Cat.Face(insert.ID)
	if why != "" {
		return f, "No face is drawn: " + why + "."
	}
	if e.Gender.V == "" {
		return f, "No face is drawn: the file does not say whether " + e.ID + " has pins or sockets, and the one is the mirror image of " +
			"the other. Pin by the list."
	}
	seen := places.Seen(catalogue.Side{Socket: e.Gender.V == model.GenderSocket})
	f = face.Face{Title: "Rear of " + e.ID, Places: seen.Places, In: map[string]face.Cavity{}, BootHours: bootHours(e)}
	smallest := ""
	for _, c := range insert.Contacts {
		if smallest == "" || smaller(c.Size, smallest) {
			smallest = c.Size
		}
	}
	for _, p := range pins {
		f.In[p.Cavity] = face.Cavity{Number: numbers(m, p), Use: useOf(p), Large: smallest != "" && p.Size != "" && p.Size != smallest}
	}
	return f, ""
}

// smaller reports whether a contact size is smaller than another: a higher number, or one with a letter.
func smaller(a, b string) bool {
	number := func(size string) (n int) {
		_, _ = fmt.Sscanf(size, "%d", &n)
		return n
	}
	return number(a) > number(b)
}

// numbers is what stands in a cavity: the number of its wire, with a + where more is in it.
func numbers(m list.Maker, p Pin) string {
	switch {
	case len(p.Wires) > 1 || len(p.Wires) == 1 && p.Drain != "":
		return m.H.Wires[p.Wires[0]].ID + "+"
	case len(p.Wires) == 1:
		return m.H.Wires[p.Wires[0]].ID
	case p.Drain != "":
		return "drain"
	}
	return ""
}

func useOf(p Pin) face.Use {
	return map[string]face.Use{spare: face.Spare, reserved: face.Reserved, blank: face.Blank}[p.State]
}

// bootHours is where the boot points with the key at 12: both are hours seen from the wire side. A key that is
// not clocked is at 12. 0: the file does not say where the boot points.
func bootHours(e *model.Termination) int {
	if !e.BootClock.Set {
		return 0
	}
	return (e.BootClock.V-e.Clock.Or(12)+23)%12 + 1
}

// How wide a face is at most and at least, and the letters it is drawn with: as large as the room allows.
const (
	mostFace  unit.Millimetre = 180
	leastFace unit.Millimetre = 60
)

var faceSizes = []unit.Millimetre{11 * page.MillimetrePerPoint, 10 * page.MillimetrePerPoint, 9 * page.MillimetrePerPoint}

// drawnFace is a face no wider than its numbers need, in the largest letters with which it fits; false where it
// fits with none. Numbers may be left to the list where left says so.
func drawnFace(f face.Face, left bool, fits func(face.Drawing) bool) (face.Drawing, bool) {
	for k, size := range faceSizes {
		d, ok := face.Draw(f, max(leastFace, face.Least(f, size, mostFace)))
		if !ok || (d.Size < size || len(d.Listed) > 0) && !(left && k == len(faceSizes)-1) {
			continue
		}
		if fits(d) {
			return d, true
		}
	}
	return face.Drawing{}, false
}

// besideLeast is how wide words beside a face are at least, mm.
const besideLeast unit.Millimetre = 42

// withWords is a face with words beside it, or below it where it leaves no room at its side.
func withWords(f face.Face, d face.Drawing, words func(wide unit.Millimetre) []page.Block) []page.Block {
	var b strings.Builder
	svg.Write(&b, d.Sheet, "face")
	box := d.Sheet.Box
	wide, high := box.High.X-box.Low.X, box.High.Y-box.Low.Y
	picture := kept(page.Picture(template.HTML(b.String()), high)) // #nosec: the writer escapes
	all := func(wide unit.Millimetre) []page.Block { return append(legend(f, d, wide), words(wide)...) }
	const gutter unit.Millimetre = 5
	if rest := page.Wide - wide - gutter; rest >= besideLeast {
		return []page.Block{kept(page.Beside(gutter, page.Column{Wide: wide, Blocks: []page.Block{picture}},
			page.Column{Wide: rest, Blocks: all(rest)}))}
	}
	out := []page.Block{picture}
	for _, w := range all(page.Wide) {
		out = append(out, kept(w))
	}
	return out
}

// legend says in a width how a face is read; of what it does not show, nothing.
func legend(f face.Face, d face.Drawing, wide unit.Millimetre) []page.Block {
	uses, large, small, more := map[face.Use]bool{}, false, false, false
	for _, p := range f.Places {
		in := f.In[p.Cavity]
		uses[in.Use] = true
		large = large || in.Large
		small = small || cavity.Small(p.Cavity)
		more = more || strings.HasSuffix(in.Number, "+")
	}
	says := "Seen from the wire side, not to scale. Above: the cavity. Bold: its wire. The key is drawn at the top from memory (~): " +
		"find it on " +
		"the part first."
	for _, s := range []struct {
		is   bool
		says string
	}{
		{f.BootHours > 0, " Arrow: where the boot points."}, {small, " Underlined: a small letter."}, {uses[face.Spare], " Dashed: " +
			"a spare wire."},
		{uses[face.Blank], " Grey: no wire."}, {uses[face.Reserved], " Grey with dots: kept free for later."},
		{large, " Heavy ring: a larger contact."}, {more, " A plus: the list has more in that cavity."},
	} {
		if s.is {
			says += s.says
		}
	}
	out := []page.Block{page.TextIn(says, page.Small, wide)}
	if len(d.Listed) > 0 {
		out = append(out, cavity.Sentence(append(cavity.Words("The number has no room here, the list has it:"),
			cavity.Names(d.Listed, ".")...),
			wide))
	}
	return out
}
