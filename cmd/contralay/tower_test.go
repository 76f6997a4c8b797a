package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// floors are the tower, bottom first: any floor may use any lower one.
var floors = []string{"model", "calc", "ui", "cmd"}

func floor(pkg string) int {
	for k, f := range floors {
		if pkg == f || strings.HasPrefix(pkg, f+"/") {
			return k
		}
	}
	return -1
}

// forbidden is what the pure floors never import directly.
var forbidden = []string{"os", "time", "io/ioutil", "math/rand", "github.com/charmbracelet", "github.com/muesli", "github.com/mattn"}

func TestTower(t *testing.T) {
	root := filepath.Join("..", "..")
	seen := 0
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && path != root && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata") {
			return filepath.SkipDir
		}
		if !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		rel, err := filepath.Rel(root, filepath.Dir(path))
		if err != nil {
			return err
		}
		pkg := filepath.ToSlash(rel)
		at := floor(pkg)
		if at < 0 {
			t.Errorf("%s stands on no floor of the tower", path)
			return nil
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		seen++
		for _, i := range f.Imports {
			name, _ := strconv.Unquote(i.Path.Value)
			if own, is := strings.CutPrefix(name, "contralay/"); is {
				if to := floor(own); to > at {
					t.Errorf("%s imports %s: every arrow points down", path, name)
				}
				if strings.HasPrefix(pkg, "calc/") && strings.HasPrefix(own, "model") && own != "model/unit" {
					t.Errorf("%s imports %s: a leaf of calc knows quantities, not nouns", path, name)
				}
				if pkg == "ui/draw" && own == "ui/bench" || pkg == "ui/paper" && own == "ui/bench" {
					t.Errorf("%s imports %s: bench uses draw and paper, not the other way", path, name)
				}
				continue
			}
			pure := pkg == "model" || pkg == "calc" || strings.HasPrefix(pkg, "calc/")
			for _, no := range forbidden {
				if pure && (name == no || strings.HasPrefix(name, no+"/")) {
					t.Errorf("%s imports %s: neither calc nor the root of model touch the world", path, name)
				}
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if seen < 50 {
		t.Fatalf("only %d files read: the test looks in the wrong place", seen)
	}
}

// The one init of the program must sort before the terminal library, or it comes
// too late to keep it from asking the terminal.
func TestQuietSortsFirst(t *testing.T) {
	if !("contralay/ui/quiet" < "github.com/charmbracelet/bubbletea") {
		t.Fatal("the module path sorts after the terminal library")
	}
}
