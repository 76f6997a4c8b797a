package desk

import (
	"fmt"
	"strings"

	"contralay/model/file/schema"
)

// KindRecord is the kind of screen with every value of one record of the file; the others that
// lead there are lists of records.
const (
	KindRecord    Kind = "values"
	KindRecords   Kind = "records"
	KindWholeFile Kind = "all of the file"
)

// RecordOf is what the screen of a record is about: its place, and the id of the first record on
// the way, which finds it where others have come or gone before it.
func RecordOf(at schema.At, id string) string { return at.String() + "\x00" + id }

// AllValuesRow opens every value of a record of a table, by its id. It stands last on the page of
// that record.
func AllValuesRow(table, id string) Row { return AllValuesOf(schema.At{{Table: table}}, id) }

// AllValuesOf is as AllValuesRow for a record inside another: id is that of the outer one.
func AllValuesOf(at schema.At, id string) Row {
	return Row{Key: "all values", Text: "all its values", Detail: "Enter lists everything that the file can hold of it",
		Enter: func(m *Model) { m.Show(KindRecord, RecordOf(at, id)) }}
}

// BranchRow opens every value of the branch in hand.
func BranchRow(m *Model) Row {
	mb := &m.H.Branches[m.Branch]
	r := AllValuesRow("branch", mb.ID)
	r.Text = "branch " + mb.ID + ": all its values"
	r.Detail = "Enter opens its ends, length, bend, what it runs through, layers, covers"
	return r
}

// FileRows lead from the map to what is of the whole harness.
func FileRows(m *Model) []Row {
	head := schema.At{{Table: "harness"}}
	hd := &m.H.Head
	says := strings.TrimSpace(strings.TrimSpace(hd.Number.V+" "+hd.Revision.V) + "  " + hd.Name.V)
	if says == "" {
		says = "name, number, revision, supply"
	}
	rows := []Row{
		{Key: "harness", Text: "this harness: " + says, Detail: "Enter opens its name, number, revision, supply, units, note",
			Enter: func(m *Model) { m.Show(KindRecord, RecordOf(head, "")) }},
		{Key: "rules", Text: "rules of this shop", Detail: "Enter lists them, with the default of each and what it changes here",
			Enter: func(m *Model) { m.Show(KindRecord, RecordOf(schema.At{{Table: "rules"}}, "")) }},
	}
	if len(m.H.Branches) > 0 {
		rows = append(rows, Row{Key: "drawing", Text: "drawing of the board", Enter: func(m *Model) { m.Show(KindDrawing, "") },
			Detail: "Enter shows the harness as it lies on its board; + - turn a branch"})
	}
	if len(m.H.Wires) > 0 {
		rows = append(rows, Row{Key: "units", Text: fmt.Sprintf("units: %d", len(m.H.Units)),
			Detail: "Enter lists them: wires made up first and laid as one",
			Enter:  func(m *Model) { m.Show(KindRecords, RecordOf(nil, "")+"\x00unit") }})
	}
	return append(rows, Row{Key: "file", Text: "everything in the file: reels, parts, builds ...",
		Detail: "Enter lists every table; each can be made and changed",
		Enter:  func(m *Model) { m.Show(KindWholeFile, "") }})
}
