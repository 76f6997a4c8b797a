package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"contralay/model/shorttest"
)

// sequencesIn are the files that may hold an escape sequence, each with its reason.
// What the bench shows is painted by lipgloss through ui/bench/kit; what the section
// shows by the canvas of ui/draw; what moves the cursor by ui/screen.
var sequencesIn = map[string]string{
	"ui/screen/screen.go": "moves the cursor and takes the terminal's screen",
	"ui/screen/cells.go":  "reads the colours of a line and writes those of its runs",
	"ui/draw/palette.go":  "colours of the canvas",
	"ui/draw/sequence.go": "measures and ends colours",

	"calc/phase/wires/notes_test.go":     "notes that hold some",
	"cmd/contralay/escape_test.go":       "what this test must find",
	"cmd/contralay/hostile_test.go":      "a hostile corpus",
	"cmd/contralay/helper_test.go":       "reads what a terminal is sent",
	"cmd/contralay/keys_test.go":         "types keys as a terminal sends them",
	"cmd/contralay/screen_test.go":       "reads what a terminal is sent",
	"cmd/contralay/terminal_test.go":     "types keys as a terminal sends them",
	"model/file/refused_test.go":         "what a file must not hold",
	"model/file/sound_test.go":           "what a file must not hold",
	"model/file/runlog_test.go":          "what a run log must not hold",
	"model/runlog/runlog_test.go":        "what a run log must not hold",
	"model/visible/visible_test.go":      "what is shown as a sign",
	"model/wirelist/table/table_test.go": "a list that holds one",
	"model/wirelist/table/tidy_test.go":  "cells that hold some",
	"ui/bench/hostile_test.go":           "a hostile corpus",
	"ui/bench/keys_test.go":              "reads what is shown",
	"ui/bench/style_test.go":             "reads what is shown",
	"ui/bench/kit/field_test.go":         "a paste that holds one",
	"ui/bench/kit/frame_test.go":         "lines that hold some",
	"ui/bench/kit/widgets_test.go":       "names that hold some",
	"ui/draw/shape/svg_test.go":          "a name that holds one",
	"ui/screen/cells_test.go":            "reads what a terminal is sent, and sends some",
	"ui/screen/screen_test.go":           "reads what a terminal is sent, and sends some",
	"ui/draw/colour_test.go":             "what the canvas writes",
	"ui/draw/sequence_test.go":           "lines that hold some",
	"ui/draw/text_test.go":               "lines that hold some",
	"ui/paper/paper_test.go":             "a sheet holds none",
	"ui/paper/told_test.go":              "cells that hold some",
}

// sequence reports whether a literal holds what begins an escape sequence: ESC, or CSI
// in eight bits.
func sequence(literal *ast.BasicLit) bool {
	var text string
	switch literal.Kind {
	case token.STRING:
		text, _ = strconv.Unquote(literal.Value)
	case token.CHAR:
		r, _, _, _ := strconv.UnquoteChar(strings.Trim(literal.Value, "'"), '\'')
		text = string(r)
	}
	return strings.ContainsAny(text, "\x1b\u009b")
}

// digits are what every spelling of one has: only files with some are taken apart.
var digits = regexp.MustCompile(`(?i)1b|033|9b|233|` + string(rune(27)) + "|" + string(rune(0x9b)))

// No escape sequence is written by hand outside its place, however it is spelled.
func TestSequencesHaveTheirPlace(t *testing.T) {
	if !shorttest.Long() {
		t.Skip("it parses every file: in the long form")
	}
	root, files := filepath.Join("..", ".."), 0
	found := map[string]bool{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && path != root && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata") {
			return filepath.SkipDir
		}
		if !strings.HasSuffix(path, ".go") {
			return nil
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		if files++; !digits.Match(text) {
			return nil
		}
		set := token.NewFileSet()
		f, err := parser.ParseFile(set, path, text, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		name := filepath.ToSlash(rel)
		ast.Inspect(f, func(n ast.Node) bool {
			literal, is := n.(*ast.BasicLit)
			if !is || !sequence(literal) {
				return true
			}
			found[name] = true
			if sequencesIn[name] == "" {
				t.Errorf("%s:%d holds an escape sequence: colours come from ui/bench/kit, the cursor from ui/screen", name,
					set.Position(literal.Pos()).Line)
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if files < 200 {
		t.Fatalf("only %d files read: the test looks in the wrong place", files)
	}
	for name := range sequencesIn {
		if !found[name] {
			t.Errorf("%s holds no escape sequence: take it off the list", name)
		}
	}
}

// The test finds a sequence in every spelling that Go has.
func TestSequenceSpellings(t *testing.T) {
	for source, want := range map[string]bool{
		`"\x1b[0m"`: true, `"a\033[0m"`: true, `"\u001b[0m"`: true, `"\U0000001b"`: true, `'\x1b'`: true, `'\033'`: true,
		"`\x1b[0m`": true, `"\u009b0m"`: true, `"[0m"`: false, `"␛"`: false, `'\''`: false, `27`: false, `"\\x1b"`: false,
	} {
		e, err := parser.ParseExpr(source)
		if err != nil {
			t.Fatal(err)
		}
		if got := sequence(e.(*ast.BasicLit)); got != want {
			t.Errorf("%s: %v, want %v", source, got, want)
		}
	}
}
