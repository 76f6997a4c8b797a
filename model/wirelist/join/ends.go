package join

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/abreast"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endpins"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Ends turns the names of far and near ends into terminations, cavities and splices,
// now that every list is read.
func Ends(im *draft.Importer) {
	endpins.Part(im)
	bare, numbered, pinned := map[string]int{}, map[string]int{}, map[string]bool{}
	keys := abreast.Each(2*len(im.Items), func(i int) endKey { return keyOf(endAt(im, i)) })
	each := func(f func(it *draft.Item, e *draft.End, k endKey)) {
		for i, it := range im.Items {
			f(it, &it.From, keys[2*i])
			f(it, &it.To, keys[2*i+1])
		}
	}
	each(func(_ *draft.Item, e *draft.End, of endKey) {
		switch k := of.key; {
		case e.Term != nil || e.Text == "":
		case e.Pin == "":
			bare[k]++
		default:
			pinned[k] = true
		}
	})
	each(func(it *draft.Item, e *draft.End, of endKey) {
		if e.Term != nil || e.Text == "" && e.Pin == "" {
			return
		}
		// "J1 8" where J1 has cavities elsewhere: a blank, or the end of a line, parts the two.
		if at := strings.LastIndexByte(e.Text, ' '); e.Pin == "" && at > 0 && strings.ContainsAny(e.Text[at:], "0123456789") &&
			name.IsCavity(e.Text[at+1:]) {
			connector := strings.TrimSpace(e.Text[:at])
			if t := im.ByKey[name.Key(connector)]; pinned[name.Key(connector)] || t != nil && t.Titled {
				e.Text, e.Pin = connector, e.Text[at+1:]
				of = keyOf(e)
			}
		}
		k, stud := of.key, false
		t := im.ByKey[k]
		switch {
		case e.Text == "":
			it.Notes = append(it.Notes, "cavity "+e.Pin)
			im.Say(report.Warn, "cavity without connector", it.Place, e.Pin, "kept in the note")
			*e = draft.End{}
			return
		case of.free && (e.Pin == "" || !name.IsConnectorWord(table.Fold(e.Text))) ||
			of.unknown || e.Pin == "" && endtext.SaysOpen(e.Text):
			if text := value.JoinNonEmpty(" ", e.Text, e.Pin); name.StateOf(text) == name.Used {
				it.Notes = append(it.Notes, "end: "+text)
				im.Say(report.Note, "end not known", it.Place, text, "kept in the note")
			}
			*e = draft.End{}
			return
		case e.Pin == "" && !pinned[k] && name.IsSpliceName(e.Text):
			e.Splice = splice(im, e.Text)
			return
		case e.Pin == "" && strings.Contains(e.Text, ":"):
			it.Notes = append(it.Notes, "end: "+e.Text)
			im.Say(report.Warn, "end not understood", it.Place, e.Text, "kept in the note, no end made")
			*e = draft.End{}
			return
		case e.Pin == "" && bare[k] == 1 && !pinned[k] && (t == nil || !t.Titled):
			e.Pin = "1"
			im.Say(report.Note, report.EndWithoutCavity, it.Place, e.Text, "taken as a termination of one cavity")
		case e.Pin == "" && endtext.IsStud(e.Text) && !pinned[k] && (t == nil || !t.Titled):
			e.Pin, stud = "1", true
		case e.Pin == "" && !pinned[k] && (t == nil || !t.Titled):
			numbered[k]++
			e.Pin = strconv.Itoa(numbered[k])
			if numbered[k] == 1 {
				im.Say(report.Note, report.DeviceNumbered, it.Place, e.Text, "its cavities are numbered, one for each wire")
			}
		case e.Pin == "":
			it.Notes = append(it.Notes, "end at "+e.Text)
			im.Say(report.Warn, "end without cavity, at a connector that has named ones", it.Place, e.Text, "kept in the note, no end made")
			*e = draft.End{}
			return
		}
		e.Pin = strings.ReplaceAll(e.Pin, ":", "-")
		e.Term = im.Named(e.Text, it.Place, false)
		e.Term.Numbered = e.Term.Numbered || numbered[k] > 0
		if stud && !e.Term.Stud {
			e.Term.Stud = true
			im.Say(report.Note, report.StudOfWires, it.Place, e.Text, "taken as a termination of one cavity, all of them in it")
		}
		e.Term.Pin(e.Pin, it.State, it.Place)
	})
	im.Items = slices.DeleteFunc(im.Items, func(it *draft.Item) bool {
		if it.From.String() == "" && it.To.String() != "" {
			it.From, it.To = it.To, it.From
		}
		if it.State != name.Blank && it.State != name.Reserved {
			return false
		}
		im.RestOf(it, value.JoinNonEmpty(" to ", it.From.String(), it.To.String()))
		return true
	})
}

// endKey is what the text of an end is found by, and whether it is the word for a free place or a mark for what is not known.
type endKey struct {
	key           string
	free, unknown bool
}

func keyOf(e *draft.End) (of endKey) {
	if e.Text != "" {
		of.key = name.Key(e.Text)
		if e.Term == nil {
			of.free, of.unknown = name.StateOf(e.Text) != name.Used, name.IsUnknown(e.Text)
		}
	}
	return of
}

// endAt is an end of an item: each has two, the near one first.
func endAt(im *draft.Importer, i int) *draft.End {
	if it := im.Items[i/2]; i%2 > 0 {
		return &it.To
	} else {
		return &it.From
	}
}

// splice makes or finds a splice; where it stands is settled with the tree.
func splice(im *draft.Importer, called string) string {
	id := strings.Join(strings.Fields(strings.ReplaceAll(name.SpliceID(called), ":", "-")), "-")
	if !im.SpliceIDs[id] {
		im.SpliceIDs[id] = true
		im.H.Splices = append(im.H.Splices, model.Splice{ID: id})
	}
	return id
}

// nextSplice is the first free S1, S2 ….
func nextSplice(im *draft.Importer) string {
	for {
		im.Splices++
		if id := fmt.Sprintf("S%d", im.Splices); !im.SpliceIDs[id] {
			return splice(im, id)
		}
	}
}
