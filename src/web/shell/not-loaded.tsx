/** In place of a part of the page that the network did not bring. */
export function NotLoaded() {
  return (
    <p className="page-wait">
      This part of the page could not be loaded. Load the page again; what was typed is kept.
    </p>
  )
}
