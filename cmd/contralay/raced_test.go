package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// What runs beside something else is run with the race detector, too: the line of .ci/run that does so
// names every package whose own code starts a goroutine or locks. The rest of calc is called by those.
func TestRaced(t *testing.T) {
	root := filepath.Join("..", "..")
	script, err := os.ReadFile(filepath.Join(root, ".ci", "run"))
	if err != nil {
		t.Fatal(err)
	}
	line := regexp.MustCompile(`go list ([^|]*)\|[^|]*go test -race`).FindStringSubmatch(string(script))
	var raced []string
	for _, word := range strings.Fields(strings.Join(line, " ")) {
		if pkg, is := strings.CutPrefix(word, "./"); is {
			raced = append(raced, pkg)
		}
	}
	if len(raced) < 5 {
		t.Fatalf("the line of .ci/run with the race detector names only %q", raced)
	}
	is := func(pkg string) bool {
		for _, r := range raced {
			if folder, all := strings.CutSuffix(r, "/..."); r == pkg || all && under(pkg, folder) {
				return true
			}
		}
		return false
	}
	beside := 0
	err = filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, filepath.Dir(path))
		if err != nil || rel == filepath.Join("calc", "calctest") { // which locks for the tests of others, and has none
			return err
		}
		if starts(file) {
			beside++
			if pkg := filepath.ToSlash(rel); !is(pkg) {
				t.Errorf("%s starts or locks something, and .ci/run does not run %s with the race detector", path, pkg)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if beside < 5 {
		t.Fatalf("only %d files start or lock something: the test looks in the wrong place", beside)
	}
}

// starts reports whether a file has a go statement or what goroutines share.
func starts(file *ast.File) bool {
	for _, i := range file.Imports {
		if i.Path.Value == `"sync"` || i.Path.Value == `"sync/atomic"` {
			return true
		}
	}
	found := false
	ast.Inspect(file, func(n ast.Node) bool {
		if _, is := n.(*ast.GoStmt); is {
			found = true
		}
		return !found
	})
	return found
}
