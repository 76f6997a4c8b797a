// Package markup parts the XML of workbooks in elements and texts, fast where it is as plain as spreadsheet programs write it.
// What an element means it does not know; package table does.
package markup
