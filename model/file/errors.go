package file

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/model/visible"
)

// Error is one thing that is wrong with a file.
type Error struct {
	File  string
	Line  int    // from 1; 0 where no line can be named
	Where string // table, id and key: `wire "101", key amps`; may be empty
	Says  string // what is wrong, and what is allowed
}

// Error renders "FILE:LINE: WHERE: SAYS", on one line whatever the file is called.
func (e *Error) Error() string {
	var b strings.Builder
	b.WriteString(visible.Line(e.File))
	if e.Line > 0 {
		fmt.Fprintf(&b, ":%d", e.Line)
	}
	b.WriteString(": ")
	if e.Where != "" {
		b.WriteString(e.Where + ": ")
	}
	b.WriteString(e.Says)
	return b.String()
}

// Errors is everything that is wrong with a file, by line. After maxErrors one
// last Error without line says how many more there are.
type Errors []*Error

// maxErrors is what a person reads before mending and trying again (no source).
const maxErrors = 20

// Error renders one line for each Error.
func (e Errors) Error() string {
	lines := make([]string, len(e))
	for i, one := range e {
		lines[i] = one.Error()
	}
	return strings.Join(lines, "\n")
}

// Unwrap gives the single errors to errors.As and errors.Is.
func (e Errors) Unwrap() []error {
	all := make([]error, len(e))
	for i, one := range e {
		all[i] = one
	}
	return all
}

// limited sorts by line and cuts after maxErrors; nil where nothing is wrong.
func limited(name string, all Errors) error {
	if len(all) == 0 {
		return nil
	}
	slices.SortStableFunc(all, func(a, b *Error) int { return cmp.Compare(a.Line, b.Line) })
	if more := len(all) - maxErrors; more > 0 {
		all = append(all[:maxErrors:maxErrors], &Error{File: name, Says: fmt.Sprintf("and %d more", more)})
	}
	return all
}
