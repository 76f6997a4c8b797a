package phase_test

import (
	"bytes"
	"flag"
	"go/ast"
	"go/build"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"contralay/model/shorttest"
)

// A field is one field of a type of calc/sheet: "Branch.Covers".
type field string

// A use is where a package writes and reads fields of the sheet.
type use struct {
	doc           string
	writes, reads map[field]token.Position // the first place of each
}

const sheetPath = "contralay/calc/sheet"

// owners names each field of a struct of calc/sheet by its type.
func owners(sheet *types.Package) map[*types.Var]field {
	out := map[*types.Var]field{}
	for _, name := range sheet.Scope().Names() {
		typeName, is := sheet.Scope().Lookup(name).(*types.TypeName)
		if !is {
			continue
		}
		if shape, is := typeName.Type().Underlying().(*types.Struct); is {
			for k := range shape.NumFields() {
				out[shape.Field(k)] = field(typeName.Name() + "." + shape.Field(k).Name())
			}
		}
	}
	return out
}

// exports is where the compiler put what each package exports.
func exports(t *testing.T) map[string]string {
	t.Helper()
	list := exec.Command("go", "list", "-export", "-deps", "-f", "{{.ImportPath}}\t{{.Export}}", "contralay/cmd/...", "contralay/ui/...",
		"contralay/calc/...")
	list.Stderr = os.Stderr
	text, err := list.Output()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]string{}
	for line := range bytes.Lines(text) {
		path, file, _ := strings.Cut(strings.TrimSpace(string(line)), "\t")
		out[path] = file
	}
	return out
}

// uses reads the syntax tree of packages of the program, given by their folders.
func uses(t *testing.T, folders []string) map[string]use {
	t.Helper()
	where := exports(t)
	places := token.NewFileSet()
	imports := importer.ForCompiler(places, "gc", func(path string) (io.ReadCloser, error) { return os.Open(where[path]) })
	sheet, err := imports.Import(sheetPath)
	if err != nil {
		t.Fatal(err)
	}
	named := owners(sheet)
	out := map[string]use{}
	for _, folder := range folders {
		own, err := build.ImportDir(folder, 0)
		if err != nil {
			t.Fatal(err)
		}
		u := use{writes: map[field]token.Position{}, reads: map[field]token.Position{}}
		var files []*ast.File
		for _, name := range own.GoFiles {
			f, err := parser.ParseFile(places, filepath.Join(folder, name), nil, parser.ParseComments)
			if err != nil {
				t.Fatal(err)
			}
			if f.Doc != nil {
				u.doc += f.Doc.Text()
			}
			files = append(files, f)
		}
		info := &types.Info{Selections: map[*ast.SelectorExpr]*types.Selection{}, Types: map[ast.Expr]types.TypeAndValue{}}
		config := types.Config{Importer: imports}
		if _, err := config.Check(folder, places, files, info); err != nil {
			t.Fatal(err)
		}
		for _, f := range files {
			read(f, info, places, named, u, strings.HasPrefix(folder, "calc"))
		}
		out[filepath.ToSlash(folder)] = u
	}
	return out
}

// changers are the functions that change what their first argument holds.
var changers = map[string]bool{
	"copy": true, "clear": true, "delete": true, "maps.Copy": true, "slices.Sort": true, "slices.SortFunc": true,
	"slices.SortStableFunc": true, "slices.Reverse": true, "sort.Slice": true, "sort.SliceStable": true,
}

// read finds the fields of the sheet that a file writes and reads. Within calc, to take the
// address of a plain field is to write it; above, it is how a table has a figure that may lack.
func read(f *ast.File, info *types.Info, places *token.FileSet, named map[*types.Var]field, u use, within bool) {
	written := map[*ast.SelectorExpr]bool{} // of these only the field they name is written, not read
	note := func(to map[field]token.Position, name field, at token.Pos) {
		if _, has := to[name]; !has && name != "" {
			to[name] = places.Position(at)
		}
	}
	var write func(target ast.Expr)
	write = func(target ast.Expr) {
		switch target := ast.Unparen(target).(type) {
		case *ast.SelectorExpr:
			if fields := along(target, info, named); len(fields) > 0 {
				note(u.writes, fields[len(fields)-1], target.Pos())
				written[target] = true
			} else {
				write(target.X) // a field of a value that lies in the sheet
			}
		case *ast.IndexExpr:
			write(target.X)
		case *ast.StarExpr:
			all(info.Types[target].Type, named, func(name field) { note(u.writes, name, target.Pos()) })
		}
	}
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.AssignStmt:
			for _, target := range n.Lhs {
				write(target)
			}
		case *ast.CallExpr:
			if changers[types.ExprString(n.Fun)] && len(n.Args) > 0 {
				write(n.Args[0])
			}
		case *ast.UnaryExpr: // who holds where a plain value lies can change it
			if of, is := info.Types[n.X]; is && n.Op == token.AND && within {
				if _, is := of.Type.Underlying().(*types.Struct); !is {
					write(n.X)
				}
			}
		case *ast.CompositeLit:
			literal(n, info, named, func(name field) { note(u.writes, name, n.Pos()) })
		case *ast.IncDecStmt:
			write(n.X)
		case *ast.RangeStmt:
			if n.Key != nil {
				write(n.Key)
			}
			if n.Value != nil {
				write(n.Value)
			}
		}
		return true
	})
	ast.Inspect(f, func(n ast.Node) bool {
		if s, is := n.(*ast.SelectorExpr); is {
			fields := along(s, info, named)
			if written[s] {
				fields = fields[:len(fields)-1]
			}
			for _, name := range fields {
				note(u.reads, name, s.Pos())
			}
		}
		return true
	})
}

// along is the fields of the sheet that a selection goes through, embedded ones with it.
func along(s *ast.SelectorExpr, info *types.Info, named map[*types.Var]field) (out []field) {
	chosen := info.Selections[s]
	if chosen == nil || chosen.Kind() != types.FieldVal {
		return nil
	}
	at := chosen.Recv()
	for _, k := range chosen.Index() {
		if p, is := at.Underlying().(*types.Pointer); is {
			at = p.Elem()
		}
		shape := at.Underlying().(*types.Struct)
		if name, has := named[shape.Field(k)]; has {
			out = append(out, name)
		}
		at = shape.Field(k).Type()
	}
	return out
}

// literal is every field that a literal of a type of the sheet names.
func literal(n *ast.CompositeLit, info *types.Info, named map[*types.Var]field, do func(field)) {
	shape, is := info.Types[n].Type.Underlying().(*types.Struct)
	if !is {
		return
	}
	for k, e := range n.Elts {
		which := shape.Field(k)
		if pair, is := e.(*ast.KeyValueExpr); is {
			for f := range shape.Fields() {
				if f.Name() == pair.Key.(*ast.Ident).Name {
					which = f
				}
			}
		}
		if name, has := named[which]; has {
			do(name)
		}
	}
}

// all is every field of a struct of the sheet.
func all(of types.Type, named map[*types.Var]field, do func(field)) {
	if shape, is := of.Underlying().(*types.Struct); is {
		for k := range shape.NumFields() {
			if name, has := named[shape.Field(k)]; has {
				do(name)
			}
		}
	}
}

// A claim is what the comment of a package says it reads and writes of the sheet: in an
// indented block of lines "reads TYPE: FIELD, FIELD" and "writes TYPE: FIELD".
type claim struct{ reads, writes map[field]bool }

func claimed(doc string) claim {
	out := claim{map[field]bool{}, map[field]bool{}}
	var to map[field]bool
	of := ""
	for line := range strings.Lines(doc) {
		if !strings.HasPrefix(line, "\t") {
			to = nil
			continue
		}
		for _, word := range strings.Fields(line) {
			switch {
			case word == "reads":
				to = out.reads
			case word == "writes":
				to = out.writes
			case strings.HasSuffix(word, ":"):
				of = strings.TrimSuffix(word, ":")
			case to != nil:
				to[field(of+"."+strings.TrimSuffix(word, ","))] = true
			}
		}
	}
	return out
}

// block is the lines of a claim.
func block(reads, writes []field) string {
	var b strings.Builder
	for _, part := range []struct {
		verb   string
		fields []field
	}{{"reads", reads}, {"writes", writes}} {
		line, last := "", ""
		flush := func() {
			if line != "" {
				b.WriteString("//\t" + strings.TrimRight(line, " ") + "\n")
			}
			line = ""
		}
		for k, f := range part.fields {
			of, name, _ := strings.Cut(string(f), ".")
			if of != last {
				flush()
				line, last = part.verb+" "+of+":", of
			}
			if len(line)+len(name) > 88 {
				flush()
				line = "   "
			}
			line += " " + name
			if k+1 < len(part.fields) && strings.HasPrefix(string(part.fields[k+1]), of+".") {
				line += ","
			}
		}
		flush()
	}
	return b.String()
}

var update = flag.Bool("update", false, "write anew what each phase reads and writes; look at the difference")

// rewrite puts a block of claims into a doc.go in place of the one that is there.
func rewrite(t *testing.T, path, claims string) {
	t.Helper()
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	put := false
	for line := range strings.Lines(string(text)) {
		if strings.HasPrefix(line, "//\t") || strings.HasPrefix(line, "package ") && !put {
			if !put {
				out, put = append(out, claims), true
			}
			if strings.HasPrefix(line, "//\t") {
				continue
			}
		}
		out = append(out, line)
	}
	if err := os.WriteFile(path, []byte(strings.Join(out, "")), 0o644); err != nil {
		t.Fatal(err)
	}
}

// values are types of the sheet that are made anew wherever one is needed, as a number is.
var values = map[string]string{
	"Dia":        "a diameter with its band: a phase and a query make one to reckon with",
	"SparePlace": "where a spare could run: bundle finds places for the planner, a query one for a capped spare",
}

// shared are fields that two packages write, each with its reason.
var shared = map[field]string{
	"Sheet.Proposals": "Build hands on what the prior sheet had, Adopt adds what was planned beside the screen",
}

// Each field of the sheet is written by one phase, which says so in its package comment,
// and what it says there is all that it reads and writes. Say and its like, by which
// every phase adds to the open points, are methods of the sheet itself.
func TestEachFieldHasOneWriter(t *testing.T) {
	if !shorttest.Long() {
		t.Skip("it reads the types of all that is above: in the long form")
	}
	claimants := []string{"calc"}
	phases, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	for _, entry := range phases {
		if entry.IsDir() {
			claimants = append(claimants, "calc/phase/"+entry.Name())
		}
	}
	t.Chdir(filepath.Join("..", ".."))
	others := goFolders(t, "calc/query", "ui", "cmd")
	found := uses(t, append(slices.Clone(claimants), others...))
	writer := map[field]string{}
	for _, folder := range append(slices.Clone(claimants), others...) {
		for name, at := range found[folder].writes {
			of, _, _ := strings.Cut(string(name), ".")
			if values[of] != "" {
				continue
			}
			if !slices.Contains(claimants, folder) {
				t.Errorf("%v writes %s: only a phase writes the sheet", at, name)
			}
			if was, has := writer[name]; has && shared[name] == "" {
				t.Errorf("%v writes %s, which %s writes", at, name, was)
			}
			writer[name] = folder
		}
	}
	for _, folder := range claimants {
		own := found[folder]
		var reads, writes []field
		for name := range own.writes {
			if of, _, _ := strings.Cut(string(name), "."); values[of] == "" {
				writes = append(writes, name)
			}
		}
		for name := range own.reads {
			if _, writes := own.writes[name]; !writes {
				reads = append(reads, name)
			}
		}
		slices.Sort(reads)
		slices.Sort(writes)
		if *update {
			rewrite(t, filepath.Join(folder, "doc.go"), block(reads, writes))
			continue
		}
		says := claimed(own.doc)
		agree(t, folder, "reads", says.reads, reads, own.reads)
		agree(t, folder, "writes", says.writes, writes, own.writes)
	}
}

// agree holds what a package says of itself to what it does.
func agree(t *testing.T, folder, verb string, says map[field]bool, does []field, at map[field]token.Position) {
	t.Helper()
	for _, name := range does {
		if !says[name] {
			t.Errorf("%v %s %s, and the comment of %s does not say so", at[name], verb, name, folder)
		}
	}
	for name := range says {
		if !slices.Contains(does, name) {
			t.Errorf("%s says that it %s %s, and does not", folder, verb, name)
		}
	}
}

// goFolders are the folders under some that hold a package.
func goFolders(t *testing.T, roots ...string) (out []string) {
	t.Helper()
	for _, root := range roots {
		err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
			if err != nil || !entry.IsDir() {
				return err
			}
			own, err := build.ImportDir(path, 0)
			if err == nil && len(own.GoFiles) > 0 && !strings.HasSuffix(path, "test") { // such a one serves tests alone
				out = append(out, path)
			}
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if len(out) < 15 {
		t.Fatalf("only %d packages read", len(out))
	}
	return out
}

// A comment that claims too much or too little is found out.
func TestClaimsAreRead(t *testing.T) {
	says := claimed("Package x does.\n\n\treads Wire: Dia, Path\n\twrites Branch: OverMM,\n\t    TapeMM\n\nreads Unit: Dia\n")
	for name, want := range map[field]bool{"Wire.Dia": true, "Wire.Path": true, "Unit.Dia": false, "Branch.TapeMM": false} {
		if says.reads[name] != want {
			t.Errorf("reads %s: %v", name, !want)
		}
	}
	if !says.writes["Branch.TapeMM"] || len(says.writes) != 2 {
		t.Errorf("writes %v", says.writes)
	}
}
