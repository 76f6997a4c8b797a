// Package titled makes one text of a row of two cells that names the connector of the table below it.
//
// Package block asks it before it looks for tables.
package titled
