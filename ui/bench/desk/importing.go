package desk

import (
	"contralay/model"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Importing is a list that is open.
type Importing struct {
	Path   string
	Tables []table.Table
	Recipe name.Recipe
	Unit   value.LengthUnit
	Cols   []shape.ShownColumn
	H      model.Harness
	Rep    report.Report
	Err    error
	Before *Importing // as it was before the last thing said of it
}
