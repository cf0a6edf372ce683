package org.groundline.web.api;

import org.groundline.web.Doors;
import org.groundline.web.request.Guard;
import org.groundline.web.request.Routes;

/// The API.
public final class Api {
    private final Doors doors;
    private final Guard guard;

    public Api(Doors doors, Guard guard) {
        this.doors = doors;
        this.guard = guard;
    }

    public void addTo(Routes all) {
        var routes = new ApiRoutes(all);
        new DocumentRoutes().addTo(routes);
        new TheoryRoutes().addTo(routes);
        new SessionRoutes(doors, guard).addTo(routes);
        new CourseRoutes(doors).addTo(routes);
        new BriefRoutes(doors).addTo(routes);
        new PracticeRoutes(doors).addTo(routes);
        new OpeningRoutes(doors).addTo(routes);
        new SittingRoutes(doors).addTo(routes);
        new StudentRoutes(doors).addTo(routes);
        new RateRoutes(doors).addTo(routes);
        new PeopleRoutes(doors).addTo(routes);
        new PolicyRoutes(doors).addTo(routes);
    }
}
