package org.groundline.web.author;

import org.groundline.web.Doors;
import org.groundline.web.request.Routes;

/// All pages for authors and reviewers.
public final class AuthorPages {
    private final Doors doors;

    public AuthorPages(Doors doors) {
        this.doors = doors;
    }

    public void addTo(Routes routes) {
        new BankPages(doors).addTo(routes);
        new EditPages(doors).addTo(routes);
        new QuestionPages(doors).addTo(routes);
        new ComparePages(doors).addTo(routes);
        new OwnWordPages(doors).addTo(routes);
        new AirLawPages(doors).addTo(routes);
        new ExportPages(doors).addTo(routes);
    }
}
