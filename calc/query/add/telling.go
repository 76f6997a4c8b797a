package add

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
)

func sortedKeys[V any](of map[string]V) []string { return slices.Sorted(maps.Keys(of)) }

// tellWires tells what the wires of each row of the kind took.
func (d *devices) tellWires() {
	for r, c := range d.kind.Carries {
		ids := d.of[r]
		if len(ids) == 0 {
			continue
		}
		list := strings.Join(ids, ", ")
		back := ""
		if k := slices.IndexFunc(d.h.Wires, func(w model.Wire) bool { return w.ID == ids[0] }); d.h.Wires[k].Return.Set {
			back = fmt.Sprintf("; the current comes back by the wire of cavity %s", c.Return)
		}
		d.tell(Chosen, "role", ids, d.kind.Layout, "%s: %s, in cavity %s of its device; role %s%s", list, c.What, c.Cavity, c.Role, back)
		spec, size := d.sizeOf(r)
		switch {
		case d.ask.Size != "":
			d.chose("spec", ids, "%s: %s", list, spec)
		case c.Size == "":
			d.tell(Missing, "size", ids, c.SizeIs, "%s: the kind gives no size%s. %s %s holds its place: choose one", list,
				because(c.SizeIs.From), spec, model.SizeWords(size))
		default:
			d.tell(Chosen, "size", ids, c.SizeIs, "%s: %s %s", list, spec, model.SizeWords(size))
		}
		d.tellFlow(r, list)
		d.tellFar(r, list)
	}
	for _, term := range d.where {
		d.chose("cavity", []string{term}, "At %s: %s", term, strings.Join(d.pinned[term], ", "))
	}
	d.chose("colour", d.out.Wires, "Colours are the next codes that no other wire at the same ends has")
}

func because(from string) string {
	if from == "" {
		return ""
	}
	return " (" + from + ")"
}

// tellFlow tells the current of a row and how it comes and goes.
func (d *devices) tellFlow(r int, list string) {
	c, ids := d.kind.Carries[r], d.of[r]
	switch {
	case d.kind.Outside != "":
	case c.Amps == 0 && c.LimitA > 0:
		d.tell(Missing, "amps", ids, c.LimitIs, "%s: the kind gives no current. Its contact bears %s A: enter what flows", list,
			plainAmps(c.LimitA))
	case c.Amps == 0:
		d.tell(Missing, "amps", ids, c.AmpsIs, "%s: the kind gives no current%s", list, because(c.AmpsIs.From))
	default:
		d.tell(Chosen, "amps", ids, c.AmpsIs, "%s: %s A", list, plainAmps(c.Amps))
	}
	if c.OnS > 0 && c.Amps > 0 && d.kind.Outside == "" {
		d.tell(Chosen, "on_s", ids, c.DutyIs, "%s: on for %s s in every %s s, %s A in between", list, plain(float64(c.OnS)),
			plain(float64(c.PeriodS)), plainAmps(c.RestA))
	}
	if c.PeakA > 0 && d.kind.Outside == "" {
		d.tell(Chosen, "", ids, c.PeakIs, "%s: %s A for %s s at first. That is not in the file: choose the fuse and the output by it", list,
			plainAmps(c.PeakA), plain(float64(c.PeakS)))
	}
}

// tellFar tells where the other ends of a row go, and where the kind would have them.
func (d *devices) tellFar(r int, list string) {
	c, ids := d.kind.Carries[r], d.of[r]
	if d.splice[r] != "" {
		d.chose("from", ids, "%s: from %s", list, d.splice[r])
		return
	}
	term, ok := d.farEnd(c)
	switch {
	case !ok:
		d.tell(Missing, "from", ids, Taken{}, "%s: no connector is given for the other end, which goes to: %s", list, c.Far)
	case !strings.HasPrefix(c.Far, "controller") && d.ask.Ends[c.Far] == "":
		d.tell(Chosen, "from", ids, d.kind.Layout, "%s: to %s here. The other end goes to: %s. Change it where that is another place", list,
			d.s.H.Terminations[term].ID, c.Far)
	}
}

// tellKind tells what must be asked of such devices, and what is outside what the sheet rates.
func (d *devices) tellKind() {
	if d.kind.Ask != "" {
		d.tell(Ask, "", d.terms, Taken{}, "Such devices differ. Ask: %s", d.kind.Ask)
	}
	if d.kind.Outside != "" {
		d.tell(Outside, "", d.terms, Taken{}, "This is outside what the sheet rates: %s. No current is entered", d.kind.Outside)
	}
	if d.kind.Note != "" {
		d.tell(Chosen, "", d.terms, Taken{}, "%s", d.kind.Note)
	}
}
