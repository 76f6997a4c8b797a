package main

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/scanner"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// What a person who reviews can take in: no package is longer, no type has more methods,
// no line is wider.
const (
	mostLines   = 2500 // of a package, tests not counted
	mostMethods = 60   // of a type
	mostColumns = 140  // a tab counts as four
)

// sources reads every file of the program in Go.
func sources(t *testing.T) map[string][]byte {
	t.Helper()
	root := filepath.Join("..", "..")
	out := map[string][]byte{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") {
			return err
		}
		rel, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		out[filepath.ToSlash(rel)], err = os.ReadFile(path)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(out) < 400 {
		t.Fatalf("only %d files read: the test looks in the wrong place", len(out))
	}
	return out
}

func folder(path string) string { return filepath.ToSlash(filepath.Dir(path)) }

func TestNoPackageIsTooLong(t *testing.T) {
	lines := map[string]int{}
	for path, text := range sources(t) {
		if !strings.HasSuffix(path, "_test.go") {
			lines[folder(path)] += strings.Count(string(text), "\n")
		}
	}
	for pkg, n := range lines {
		if n > mostLines {
			t.Errorf("%s has %d lines, %d at most: split it", pkg, n, mostLines)
		}
	}
}

func TestNoTypeHasTooManyMethods(t *testing.T) {
	methods := map[string]int{}
	for path, text := range sources(t) {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, text, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range f.Decls {
			if name := receiver(d); name != "" {
				methods[folder(path)+"."+name]++
			}
		}
	}
	for name, n := range methods {
		if n > mostMethods {
			t.Errorf("%s has %d methods, %d at most: split it by idea", name, n, mostMethods)
		}
	}
}

// receiver is the type that a declaration is a method of, or "".
func receiver(d ast.Decl) string {
	f, is := d.(*ast.FuncDecl)
	if !is || f.Recv == nil {
		return ""
	}
	of := f.Recv.List[0].Type
	for {
		switch inner := of.(type) {
		case *ast.StarExpr:
			of = inner.X
		case *ast.IndexExpr:
			of = inner.X
		case *ast.Ident:
			return inner.Name
		default:
			return ""
		}
	}
}

func TestNoLineIsTooWide(t *testing.T) {
	for path, text := range sources(t) {
		for _, at := range wide(text) {
			t.Errorf("%s:%s: %d at most", path, at, mostColumns)
		}
	}
}

// wide is the lines of a file that are too wide, with their width. What stands within a raw
// string is written as it must come out, and is let be.
func wide(text []byte) (out []string) {
	file := token.NewFileSet().AddFile("", -1, len(text))
	var s scanner.Scanner
	s.Init(file, text, nil, scanner.ScanComments)
	within := map[int]bool{}
	for {
		at, kind, literal := s.Scan()
		if kind == token.EOF {
			break
		}
		if kind == token.STRING && strings.HasPrefix(literal, "`") {
			first := file.Line(at)
			for k := range strings.Count(literal, "\n") + 1 {
				within[first+k] = true
			}
		}
	}
	for n, line := range strings.Split(string(text), "\n") {
		columns := len([]rune(strings.ReplaceAll(line, "\t", "    ")))
		if columns > mostColumns && !within[n+1] {
			out = append(out, fmt.Sprintf("%d has %d columns", n+1, columns))
		}
	}
	return out
}

// The rule itself: a tab is four columns, a raw string may be wide.
func TestWide(t *testing.T) {
	long := strings.Repeat("x", mostColumns-4)
	for _, c := range []struct {
		text string
		want int
	}{
		{"package x\n\t" + "//" + long[2:] + "\n", 0}, {"package x\n\t" + "//" + long[1:] + "\n", 1},
		{"package x\nvar y = `" + long + long + "`\n", 0}, {"package x\nvar y = `\n" + long + long + "\n`\n", 0},
	} {
		if got := wide([]byte(c.text)); len(got) != c.want {
			t.Errorf("%q: %v", c.text[:20], got)
		}
	}
}
