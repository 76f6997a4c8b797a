package desk

import (
	"contralay/calc/query/run"
	"contralay/calc/sheet"
)

// Running is where a run stands.
type Running struct {
	Serial string
	At     int
	Steps  []run.RunStep
	Of     *sheet.Sheet // the sheet steps were made for
	Asked  string       // the odd thing that was asked last
}
