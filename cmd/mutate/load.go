package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// A room is a package that may be changed: its files as text and as a tree, its types.
type room struct {
	path, name, dir string
	fset            *token.FileSet
	files           []*source
	info            *types.Info
	exports         map[string]string // import path: file of what it exports
}

// A source is one file of a room.
type source struct {
	path string // from the folder of the module, with slashes
	abs  string
	text []byte
	tree *ast.File
	file *token.File
}

// offset is where a place stands in the text.
func (s *source) offset(p token.Pos) int { return s.file.Offset(p) }

// cut is the text from one place to another.
func (s *source) cut(from, to token.Pos) string { return string(s.text[s.offset(from):s.offset(to)]) }

// listed is what `go list -json` tells of a package.
type listed struct {
	ImportPath, Name, Dir, Export string
	GoFiles, CgoFiles             []string
	TestGoFiles, XTestGoFiles     []string
	Deps                          []string
	Module                        *struct{ Dir string }
}

// goList asks the go command in a folder; each package as it comes.
func goList(dir string, args ...string) ([]listed, error) {
	cmd := exec.Command("go", append([]string{"list"}, args...)...)
	cmd.Dir = dir
	var complaint bytes.Buffer
	cmd.Stderr = &complaint
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("go list %s: %w\n%s", strings.Join(args, " "), err, complaint.Bytes())
	}
	var all []listed
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var one listed
		switch err := d.Decode(&one); {
		case errors.Is(err, io.EOF):
			return all, nil
		case err != nil:
			return nil, fmt.Errorf("go list: %w", err)
		}
		all = append(all, one)
	}
}

// load reads the packages of some patterns that a program is made of; all of them where none is
// named. What only tests import is no part of a program.
func load(dir string, patterns []string, program string) ([]*room, error) {
	wanted, err := goList(dir, append([]string{"-json=ImportPath"}, patterns...)...)
	if err != nil {
		return nil, err
	}
	want := map[string]bool{}
	for _, l := range wanted {
		want[l.ImportPath] = true
	}
	roots := patterns
	if program != "" {
		roots = []string{program}
	}
	// The last three are what the helper in each changed copy imports.
	roots = append(slices.Clone(roots), "os", "strconv", "sync")
	deps, err := goList(dir, append([]string{"-deps", "-export", "-json=ImportPath,Name,Dir,Export,GoFiles,CgoFiles,Module"}, roots...)...)
	if err != nil {
		return nil, err
	}
	exports := map[string]string{}
	for _, l := range deps {
		exports[l.ImportPath] = l.Export
	}
	var rooms []*room
	for _, l := range deps {
		if !want[l.ImportPath] || len(l.CgoFiles) > 0 || l.Module == nil {
			continue
		}
		r := &room{path: l.ImportPath, name: l.Name, dir: l.Dir, fset: token.NewFileSet(), exports: exports}
		for _, name := range l.GoFiles {
			abs := filepath.Join(l.Dir, name)
			rel, err := filepath.Rel(l.Module.Dir, abs)
			if err != nil {
				return nil, err
			}
			text, err := os.ReadFile(abs)
			if err != nil {
				return nil, err
			}
			r.files = append(r.files, &source{path: filepath.ToSlash(rel), abs: abs, text: text})
		}
		if err := r.parse(); err != nil {
			return nil, err
		}
		rooms = append(rooms, r)
	}
	return rooms, nil
}

// parse makes trees and types of the texts.
func (r *room) parse() error {
	var trees []*ast.File
	for _, s := range r.files {
		tree, err := parser.ParseFile(r.fset, s.abs, s.text, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		s.tree, s.file = tree, r.fset.File(tree.FileStart)
		trees = append(trees, tree)
	}
	r.info = &types.Info{Types: map[ast.Expr]types.TypeAndValue{}, Uses: map[*ast.Ident]types.Object{}}
	_, err := r.config(r.fset, nil).Check(r.path, r.fset, trees, r.info)
	return err
}

// config checks types by what the other packages export, as the compiler does.
func (r *room) config(fset *token.FileSet, said func(error)) *types.Config {
	return &types.Config{
		Importer: importer.ForCompiler(fset, "gc", func(path string) (io.ReadCloser, error) {
			if r.exports[path] == "" {
				return nil, fmt.Errorf("nothing is known of what %s exports", path)
			}
			return os.Open(r.exports[path])
		}),
		Error: said,
	}
}

// faults are the places, within the changed texts of some files, that do not compile.
func (r *room) faults(texts map[*source]string) (map[*source][]int, error) {
	fset := token.NewFileSet()
	var trees []*ast.File
	of := map[string]*source{}
	for _, s := range r.files {
		text, changed := texts[s]
		if !changed {
			text = string(s.text)
		}
		of[s.abs] = s
		tree, err := parser.ParseFile(fset, s.abs, text, parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		trees = append(trees, tree)
	}
	help, err := parser.ParseFile(fset, helperName, helper(r.name), parser.SkipObjectResolution)
	if err != nil {
		return nil, err
	}
	out := map[*source][]int{}
	var other error
	config := r.config(fset, func(err error) {
		var at types.Error
		if !errors.As(err, &at) {
			other = err
			return
		}
		where := fset.Position(at.Pos)
		if s := of[where.Filename]; s != nil {
			out[s] = append(out[s], where.Offset)
		} else {
			other = err
		}
	})
	_, _ = config.Check(r.path, fset, append(trees, help), nil) // every error went to the function above
	return out, other
}
