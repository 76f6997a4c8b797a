package join

import (
	"fmt"
	"strconv"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Wires makes the wires of the items, in the order of the lists. A wire without an id
// of its own takes the next number that no other has; of two with one id the second
// takes a number behind it.
func Wires(im *draft.Importer) {
	taken := make(map[string]bool, len(im.Items))
	for _, it := range im.Items {
		taken[it.OwnID] = true
	}
	next, nth := 1, map[string]int{}
	seen := make(map[string]table.Place, len(im.Items))
	im.WireIDs = make(map[string]bool, len(im.Items))
	numbered, unnamed := 0, table.Place{}
	im.H.Wires = make([]model.Wire, 0, len(im.Items))
	for _, it := range im.Items {
		id := it.OwnID
		if id == "" {
			for id = strconv.Itoa(next); taken[id]; id = strconv.Itoa(next) {
				next++
			}
			taken[id], im.Rep.Counted[id] = true, true
			if numbered++; numbered == 1 {
				unnamed = it.Place
			}
		} else if first, twice := seen[id]; twice {
			n := max(nth[id], 2)
			for taken[fmt.Sprintf("%s-%d", id, n)] {
				n++
			}
			nth[id] = n + 1
			own := id
			id = fmt.Sprintf("%s-%d", id, n)
			taken[id] = true
			if first == it.Place {
				im.Say(report.Note, "one id for the wires of a row", it.Place, own+", "+id, "each further one takes a number")
			} else {
				im.Say(report.Warn, "id given twice", it.Place, own+" as in "+rowOf(first, it.Place)+", now "+id,
					"the second takes a number")
			}
		}
		seen[id], im.WireIDs[id] = it.Place, true
		it.Wire = len(im.H.Wires)
		im.H.Wires = append(im.H.Wires, wireOf(im, it, id))
	}
	if numbered > 0 && numbered < len(im.Items) {
		im.Say(report.Note, "wires without id", unnamed, fmt.Sprint(numbered), "numbered")
	}
}

// rowOf names a row to somebody who is at another place: with its list where it is of another.
func rowOf(p, from table.Place) string {
	row := fmt.Sprintf("row %d", p.Row)
	if p.File == from.File && p.Sheet == from.Sheet {
		return row
	}
	return value.JoinNonEmpty(" ", p.File, p.Sheet, row)
}

// wireOf is one wire, its notes not yet.
func wireOf(im *draft.Importer, it *draft.Item, id string) model.Wire {
	w := model.Wire{ID: id, Size: it.Gauge.Size, Spec: it.Gauge.Spec, Amps: it.Amps, Role: roleOf(it)}
	if it.Signal != "" {
		w.Signal = model.Some(it.Signal)
	}
	if s := it.From.String(); s != "" {
		w.From = model.Some(s)
	}
	if s := it.To.String(); s != "" {
		w.To = model.Some(s)
	}
	_, metric := catalogue.MetricArea(w.Size)
	switch {
	case w.Spec != "":
	case metric:
		w.Spec = im.Opt.Metric
	default:
		w.Spec = im.Opt.Spec
	}
	if code := colourCode(im, it, w.Spec); code != "" {
		w.Colour = model.Some(code)
		if s := it.Colour[0].Shade; s != "" {
			w.Shade = model.Some(model.Shade(s))
		}
	}
	if w.Size == "" {
		im.Say(report.Warn, "wire without size", it.Place, id, "none set")
	} else if _, known := im.Cat.Wire(w.Spec, w.Size); !known {
		im.Say(report.Warn, "wire the catalogue does not have", it.Place, w.Spec+" "+w.Size, "kept")
	}
	return w
}

// colourCode is the colour as the file has it: digits for an aerospace specification, as
// its part numbers have them, else letters, else words: what neither has is what its spool is called.
func colourCode(im *draft.Importer, it *draft.Item, spec string) string {
	if strings.HasPrefix(spec, "AS22759/") {
		if digits, ok := it.Colour.Digits(); ok {
			return digits
		}
	}
	code, ok := it.Colour.Letters()
	if !ok && len(it.Colour) > 0 {
		code = it.Colour.Words()
		im.Say(report.Note, "colour without a code", it.Place, code, "written as the word")
	}
	return code
}

// Notes writes what is left as text into the notes of the wires.
func Notes(im *draft.Importer) {
	for _, it := range im.Items {
		it.Notes = draft.Once(it.Notes)
		if s := strings.Join(it.Notes, "; "); s != "" {
			im.H.Wires[it.Wire].Note = model.Some(s)
			im.Rep.Notes[im.H.Wires[it.Wire].ID] = it.Notes
		}
	}
}
