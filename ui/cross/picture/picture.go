// Package picture is the section of a branch as a drawing of its own, as SVG.
package picture

import (
	"fmt"
	"strconv"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/cross"
	"contralay/ui/draw/shape"
)

// Unknown is a word that asks for what there is not: what it was, and what it may be.
type Unknown struct{ says string }

func (u Unknown) Error() string { return u.says }

// SVG is the section of a branch as a drawing. by is what its colours tell apart, one of Ways, or
// "" for the colours of the wires; layer is the one in hand, "centre" or a number, or "" for none.
// The error is an Unknown where one of the two is none of those.
func SVG(s *sheet.Sheet, i int, by, layer string) (string, error) {
	b, mb := &s.Branches[i], &s.H.Branches[i]
	if len(b.Layers) == 0 {
		return "", fmt.Errorf("branch %s has nothing to draw: no wire runs in it, or the size of one is not known", mb.ID)
	}
	way, known := cross.ByColour, true
	if by != "" {
		way, known = cross.Find(by)
	}
	if !known {
		return "", Unknown{fmt.Sprintf("--by %q: give one of %s", by, strings.Join(Ways(), ", "))}
	}
	section := cross.Of(s, i)
	names := cross.Paint(s, i, &section, way, unit.MM)
	if layer != "" {
		k, err := strconv.Atoi(layer)
		if layer == "centre" {
			k, err = 0, nil
		}
		if err != nil || k < 0 || k >= len(b.Layers) {
			return "", Unknown{fmt.Sprintf("--layer %q: %s has %s", layer, mb.ID, layersOf(len(b.Layers)))}
		}
		cross.TakeLayer(s, i, &section, k)
	}
	var keys []shape.Key
	for k, n := range names {
		keys = append(keys, shape.Key{Class: k, Name: n})
	}
	says := []string{"OD " + unit.MM.Diameter(b.OverMM) + " mm"}
	if section.Says != "" {
		says = append([]string{section.Says}, says...)
	}
	if section.SheathMM > 0 {
		says = append(says, "in sheath "+unit.MM.Diameter(section.SheathMM)+" mm")
	}
	section.Says = strings.Join(says, ", ")
	head := strings.Fields(s.H.Head.Number.V + " " + s.H.Head.Revision.V + " " + mb.ID + " " + mb.Name.V)
	title := strings.Join(head, " ") + ", from " + mb.From + ", by " + way.String()
	return shape.SVG(section, title, keys), nil
}

// Ways are the words for what colours tell apart.
func Ways() []string { return append([]string{"colour"}, cross.Names()[1:]...) }

// layersOf are the layers that a branch has.
func layersOf(n int) string {
	switch n {
	case 1:
		return "only its centre (0)"
	case 2:
		return "its centre (0) and " + model.LayerName(1) + " (1)"
	}
	return fmt.Sprintf("its centre (0) and layers 1 to %d", n-1)
}
