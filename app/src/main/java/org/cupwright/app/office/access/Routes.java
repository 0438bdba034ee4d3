package org.cupwright.app.office.access;

import static org.cupwright.app.office.access.Route.open;
import static org.cupwright.app.office.access.Route.signedIn;
import static org.cupwright.app.office.access.Route.with;

import java.util.List;
import org.cupwright.app.session.Right;

/** Every address there is. What is not in this table is refused, whoever asks. */
public final class Routes {
    public static final List<Route> ALL = List.of(
            open("GET", "/assets/**"),
            open("GET", "/webjars/**"),
            open("GET", "/sign-in"),
            open("POST", "/sign-in"),
            open("GET", "/join"),
            open("POST", "/join"),
            open("POST", "/wish"),
            signedIn("POST", "/sign-out"),
            signedIn("GET", "/"),
            with(Right.PLAN, "POST", "/plan"),
            with(Right.PLAN, "POST", "/publish"),
            with(Right.PLAN, "POST", "/withdraw"),
            signedIn("GET", "/paper/{kind}"),
            with(Right.PEOPLE, "GET", "/people"),
            with(Right.PEOPLE, "POST", "/people/invite"),
            with(Right.PEOPLE, "POST", "/people/role"),
            with(Right.PEOPLE, "POST", "/people/remove"),
            with(Right.PEOPLE, "POST", "/people/erase"),
            signedIn("GET", "/password"),
            signedIn("POST", "/password"),
            signedIn("GET", "/green"),
            signedIn("GET", "/green/{hole}"),
            signedIn("GET", "/green/{hole}/spot"),
            with(Right.PLAN, "POST", "/green/{hole}/set"),
            with(Right.PLAN, "POST", "/green/{hole}/keep-off"),
            with(Right.PLAN, "POST", "/green/{hole}/free"),
            with(Right.RECORD, "POST", "/green/{hole}/ground"),
            with(Right.SURVEY, "POST", "/green/{hole}/level"),
            signedIn("GET", "/log"),
            signedIn("GET", "/log/photo/{id}"),
            with(Right.RECORD, "POST", "/log/add"),
            with(Right.RECORD, "POST", "/log/correct"),
            with(Right.RECORD, "POST", "/log/withdraw"),
            with(Right.RECORD, "POST", "/log/seen"),
            signedIn("GET", "/work/{id}"),
            with(Right.RECORD, "POST", "/work/{id}/stop"),
            signedIn("GET", "/weeks"),
            signedIn("GET", "/weeks/why"),
            signedIn("GET", "/weeks/paper/{kind}"),
            with(Right.PLAN, "GET", "/weeks/wish"),
            with(Right.PLAN, "POST", "/weeks/plan"),
            with(Right.PLAN, "POST", "/weeks/change"),
            with(Right.PLAN, "POST", "/weeks/undo"),
            signedIn("GET", "/course"),
            signedIn("GET", "/course/findings"),
            signedIn("GET", "/course/settings"),
            with(Right.SET, "POST", "/course/settings"),
            with(Right.SURVEY, "GET", "/course/files"),
            with(Right.SURVEY, "POST", "/course/files/look"),
            with(Right.SURVEY, "POST", "/course/files/bring"),
            with(Right.SURVEY, "GET", "/begin"),
            with(Right.SURVEY, "GET", "/begin/place"),
            with(Right.SURVEY, "POST", "/begin/place"),
            with(Right.SURVEY, "GET", "/begin/greens"),
            with(Right.SURVEY, "POST", "/begin/greens/map"),
            with(Right.SURVEY, "POST", "/begin/greens/remove"),
            with(Right.SURVEY, "GET", "/begin/greens/picture"),
            with(Right.SURVEY, "POST", "/begin/greens/picture"),
            with(Right.SURVEY, "POST", "/begin/greens/traced"),
            with(Right.SURVEY, "GET", "/begin/greens/paced"),
            with(Right.SURVEY, "POST", "/begin/greens/paced"),
            with(Right.SURVEY, "GET", "/begin/numbers"),
            with(Right.SURVEY, "POST", "/begin/numbers"),
            with(Right.SURVEY, "GET", "/begin/settings"),
            with(Right.SET, "POST", "/begin/settings"),
            with(Right.SURVEY, "GET", "/begin/look"),
            with(Right.SURVEY, "POST", "/begin/finish"),
            with(Right.SURVEY, "GET", "/begin/print"),
            with(Right.PLAN, "POST", "/begin/plan"));

    private Routes() {}
}
