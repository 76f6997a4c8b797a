package ends

import (
	"fmt"
	"slices"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

// ChosenFace draws the arrangement of the row in hand as the wires go into it.
func ChosenFace(m *desk.Model, w, h int) (title string, lines []string) {
	_, r := m.Hand()
	if r == nil {
		return "", blank(w, h)
	}
	return faceOf(m, r.Key, desk.State[Choosing](m).Gender, w, h)
}

// faceOf draws the rear of an arrangement in exactly h lines of w cells, or says why it cannot.
func faceOf(m *desk.Model, insert string, gender model.Gender, w, h int) (title string, lines []string) {
	i, known := m.Sheet.Cat.Insert(insert)
	if !known {
		return "", blank(w, h)
	}
	f, why := m.Sheet.Cat.Face(i.ID)
	if why != "" {
		return i.ID, sentence(m, why, w, h)
	}
	f = f.Seen(catalogue.Side{Socket: gender == model.GenderSocket})
	d := draw.Face{Rim: f.Rim}
	for _, p := range f.Places {
		d.Places = append(d.Places, draw.FacePlace{Name: p.Cavity, X: p.X, Y: p.Y, Class: classOf(m, i.ContactSize(p.Cavity))})
	}
	if h < 2 {
		return i.ID, blank(w, h)
	}
	c := d.Draw(w, h-1, m.Cfg.Palette)
	says := "key not shown, not to scale"
	if n := len(c.NotShown); n > 0 {
		named := fmt.Sprintf("%d of %d named", len(f.Places)-n, len(f.Places))
		if says = named + ". " + says; draw.Width(says) > w {
			says = named + ", no key"
		}
	}
	return fmt.Sprintf("%s %s from the rear", i.ID, gender),
		append(c.Styled(m.Cfg.Palette), m.Theme.Paint(kit.Quiet, draw.Fit(draw.Centre(says, w), w, m.Cfg.ASCII)))
}

// classOf is how large a contact is among those of the catalogue's connectors: larger ones look larger
// on a face.
func classOf(m *desk.Model, size string) int {
	at := slices.Index([]string{"22M", "22D", "22", "23", "20", "16", "12"}, size)
	switch {
	case at < 0:
		return 4
	case at < 4:
		return 0
	}
	return at - 3
}

// sentence is words in the middle of an empty picture.
func sentence(m *desk.Model, says string, w, h int) []string {
	out := blank(w, h)
	lines := kit.Wrap(says, max(w-2, 1))
	for k, line := range lines {
		if at := max(0, (h-len(lines))/2) + k; at < h {
			out[at] = draw.Fit(draw.Centre(line, w), w, m.Cfg.ASCII)
		}
	}
	return out
}

func blank(w, h int) []string {
	out := make([]string, max(0, h))
	for k := range out {
		out[k] = draw.Pad("", w)
	}
	return out
}
