package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"contralay/model/visible"
)

// The gate to standard output and standard error: whatever a command says goes through here, so
// that no text of a file, of a list or of a name commands the terminal or forges a line. The
// bench draws on a screen of its own, which has its own gate (ui/screen).

// print writes text of some lines: all that a terminal would obey but the line feed is shown as
// a sign.
func print(w io.Writer, text string) error { return write(w, visible.Lines(text)) }

// printJSON writes JSON, which reads back as it was: what a terminal would obey stands as an
// escape of JSON.
func printJSON(w io.Writer, text []byte) error { return write(w, string(visible.JSON(text))) }

func write(w io.Writer, text string) error {
	if _, err := io.WriteString(w, text); err != nil {
		if strings.Contains(err.Error(), "broken pipe") {
			return errPipe
		}
		return err
	}
	return nil
}

// complain says an error on standard error: one line, or one for each of a list of errors.
func complain(w world, err error) { _ = write(w.err, "contralay: "+errorText(err)+"\n") }

// tell says one line on standard error.
func tell(w world, says string) { _ = write(w.err, "contralay: "+visible.Line(says)+"\n") }

// errorText is an error on one line, a line feed in a name shown as a sign; a list of errors at
// its end has a line for each.
func errorText(err error) string {
	var list interface {
		error
		Unwrap() []error
	}
	text := err.Error()
	if !errors.As(err, &list) {
		return visible.Line(text)
	}
	front, isList := strings.CutSuffix(text, list.Error())
	var lines, raw []string
	for _, one := range list.Unwrap() {
		lines, raw = append(lines, errorText(one)), append(raw, one.Error())
	}
	if !isList || strings.Join(raw, "\n") != list.Error() {
		return visible.Line(text)
	}
	if head, broken := strings.CutSuffix(front, "\n"); broken {
		return visible.Line(head) + "\n" + strings.Join(lines, "\n")
	}
	return visible.Line(front) + strings.Join(lines, "\n")
}

// shown is a path on one line; called is the name of a file without its folder.
func shown(path string) string { return visible.Line(path) }

func called(path string) string { return visible.Line(filepath.Base(path)) }

// onOneLine is lines of which none breaks.
func onOneLine(lines []string) []string {
	out := make([]string, len(lines))
	for k, l := range lines {
		out[k] = visible.Line(l)
	}
	return out
}

// oneLine says what a value of a flag must not hold: it may go into a file.
func oneLine(flag, value string, id bool) error {
	if says, allowed := visible.Fault(value, id); says != "" {
		return misuse{fmt.Sprintf("--%s %s; allowed: %s", flag, says, allowed)}
	}
	return nil
}
