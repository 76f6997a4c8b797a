package file

// Encode writes the text of a file. It never fails, and one document has one text.
// What Parse would refuse it writes as it is; Save asks first.
func Encode(d Document) []byte {
	t := document()
	w := &writer{}
	w.WriteString(tidyHead(d.Head))
	w.keys("", t.lines(&d.Harness))
	for _, p := range t.parts {
		p.write(w, &d.Harness, "")
	}
	return []byte(w.String())
}
