package desk

import (
	"contralay/model"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// Importing is a list that is open.
type Importing struct {
	Path   string
	Tables []value.Table
	Recipe name.Recipe
	Unit   value.LengthUnit
	Cols   []shape.Column
	H      model.Harness
	Rep    report.Report
	Err    error
	Before *Importing // as it was before the last thing said of it
}
