package file

import "contralay/model/file/schema"

// Encode writes the text of a file. It never fails, and one document has one text.
// What Parse would refuse it writes as it is; Save asks first.
func Encode(d Document) []byte {
	return []byte(tidyHead(d.Head) + schema.Text(&d.Harness))
}
