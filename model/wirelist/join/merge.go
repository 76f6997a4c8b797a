package join

import (
	"fmt"
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/value"
)

// called is the name of a wire for a message: its signal, else its id, else its ends.
func called(it *draft.Item) string {
	switch {
	case it.Signal != "":
		return fmt.Sprintf("%q", it.Signal)
	case it.OwnID != "":
		return it.OwnID
	}
	return value.JoinNonEmpty(" to ", it.From.String(), it.To.String())
}

// merge takes into one item what another says of the same wire. Where both say
// something and not the same, the first holds and the second goes into the note.
func merge(im *draft.Importer, a, b *draft.Item) {
	differs := func(what, first, second string) {
		im.Say(report.Warn, "two "+what+"s for one wire", b.Place, fmt.Sprintf("%s %s and %s", called(a), first, second),
			"the first is kept, the second in the note")
		a.Notes = append(a.Notes, what+" at "+b.From.String()+": "+second)
	}
	a.Again = append(append(a.Again, b.Place), b.Again...)
	switch {
	case a.Gauge.Size == "":
		a.Gauge.Size = b.Gauge.Size
	case b.Gauge.Size != "" && b.Gauge.Size != a.Gauge.Size:
		differs("size", a.Gauge.Size, b.Gauge.Size)
	}
	if a.Gauge.Spec == "" {
		a.Gauge.Spec = b.Gauge.Spec
	} else if b.Gauge.Spec != "" && a.Gauge.Spec != b.Gauge.Spec {
		differs("specification", a.Gauge.Spec, b.Gauge.Spec)
	}
	switch {
	case len(a.Colour) == 0:
		a.Colour = b.Colour
	case len(b.Colour) > 0 && !a.Colour.Equal(b.Colour):
		a.Notes = append(a.Notes, "colour at "+b.From.String()+": "+b.Colour.String())
	}
	if a.OwnID == "" {
		a.OwnID = b.OwnID
	} else if b.OwnID != "" && b.OwnID != a.OwnID {
		differs("id", a.OwnID, b.OwnID)
	}
	if !a.Length.Set {
		a.Length = b.Length
	} else if b.Length.Set && b.Length.V != a.Length.V {
		differs("length", value.FormatLength(a.Length.V), value.FormatLength(b.Length.V))
	}
	if !a.Amps.Set {
		a.Amps = b.Amps
	} else if b.Amps.Set && b.Amps.V != a.Amps.V {
		differs("current", value.FormatCurrent(a.Amps.V), value.FormatCurrent(b.Amps.V))
	}
	if !a.Fuse.Set {
		a.Fuse = b.Fuse
	} else if b.Fuse.Set && b.Fuse.V != a.Fuse.V {
		differs("fuse", value.FormatCurrent(a.Fuse.V), value.FormatCurrent(b.Fuse.V))
	}
	if a.FuseName == "" {
		a.FuseName = b.FuseName
	}
	if a.Cue.Conductors == 0 && !a.Cue.Shielded && !a.Cue.Twisted {
		a.Cue, a.CueText = b.Cue, b.CueText
	}
	if a.Cable == "" {
		a.Cable, a.Shield, a.Kind = b.Cable, b.Shield, b.Kind
	} else if b.Cable != "" && b.Cable != a.Cable {
		differs("cable", a.Cable, b.Cable)
	}
	a.With = append(a.With, b.With...)
	for _, n := range b.Notes {
		if !slices.Contains(a.Notes, n) {
			a.Notes = append(a.Notes, n)
		}
	}
}

// differingColours says where the rows of one net do not have one colour.
func differingColours(im *draft.Importer, all []*draft.Item, did string) {
	var first *draft.Item
	for _, it := range all {
		switch {
		case len(it.Colour) == 0:
		case first == nil:
			first = it
		case !first.Colour.Equal(it.Colour):
			im.Say(report.Warn, "one net, two colours", it.Place,
				fmt.Sprintf("%s %s %s, %s %s", called(first), first.From.String(), first.Colour, it.From.String(), it.Colour),
				did)
			return
		}
	}
}
