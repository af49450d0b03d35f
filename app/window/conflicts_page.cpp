#include "app/window/conflicts_page.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/row_list.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/chain_words.h"
#include "app/wording/conflict_words.h"
#include "app/wording/join_words.h"
#include "app/wording/problem_words.h"
#include "core/store/decide.h"

#include <QHBoxLayout>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

QString sideOf(const FaultyFact& fact, bool isKeptBack)
{
    const QString who = ChainWords::fact(fact);
    return isKeptBack ? who : who + QLatin1Char('\n') + ChainWords::says(fact);
}

// Only persons and gauges can be read as one.
bool mayBeDecided(const Conflict& conflict, Holds holds)
{
    const bool isOneThing = conflict.kind == ConflictKind::Names && holds == Holds::OneThing;
    return mayHold(conflict.kind, holds) &&
           (!isOneThing || conflict.table == "person" || conflict.table == "gauge");
}

} // namespace

ConflictsPage::ConflictsPage(Records& records, QWidget* parent) : AsidePage{parent}, m_records{records}
{
    setObjectName("conflicts");
    setAccessibleName(ConflictWords::heading());
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    layout->addWidget(makeList(), 1);
    layout->addWidget(makePanel(), 2);
    connect(m_rows, &RowList::rowChosen, this, [this](int row) {
        m_result->hide();
        display(row);
    });
    connect(m_rows, &RowList::rowOpened, this, [this] { m_person->setFocus(); });
}

QWidget* ConflictsPage::makeList()
{
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* outer = new QVBoxLayout{card};
    outer->setContentsMargins(10, 14, 10, 12);
    outer->setSpacing(6);
    m_count = labelOf({}, "section", "conflictsCount");
    m_rows = new RowList{"conflict", ConflictWords::heading()};
    m_rows->setWraps();
    auto* inside = new QWidget;
    auto* rows = new QVBoxLayout{inside};
    rows->setContentsMargins(0, 4, 0, 0);
    rows->addWidget(m_rows);
    rows->addWidget(labelOf(ConflictWords::listKeys(), "soft"));
    rows->addStretch(1);
    outer->addWidget(labelOf(ConflictWords::heading(), "label"));
    outer->addWidget(m_count);
    outer->addWidget(new FlowScroll{inside}, 1);
    return card;
}

QWidget* ConflictsPage::makePanel()
{
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* outer = new QVBoxLayout{card};
    outer->setContentsMargins(1, 1, 1, 1);
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout{inside};
    layout->setContentsMargins(28, 20, 28, 20);
    layout->setSpacing(10);
    m_result = labelOf({}, "section", "conflictResult");
    m_result->hide();
    layout->addWidget(m_result);
    m_body = new QWidget;
    auto* body = new QVBoxLayout{m_body};
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(10);
    m_title = labelOf({}, "title", "conflictTitle");
    m_until = labelOf({}, "body", "conflictUntil");
    body->addWidget(m_title);
    body->addWidget(m_until);
    addSides(body);
    addForm(body);
    layout->addWidget(m_body);
    layout->addStretch(1);
    outer->addWidget(new FlowScroll{inside});
    return card;
}

void ConflictsPage::addSides(QVBoxLayout* layout)
{
    auto* sides = new QHBoxLayout;
    sides->setSpacing(18);
    const auto add = [sides](bool first, const char* name) {
        auto* side = new QVBoxLayout;
        QLabel* text = labelOf({}, "body", name);
        side->addWidget(labelOf(ConflictWords::side(first), "label"));
        side->addWidget(text);
        side->addStretch(1);
        sides->addLayout(side, 1);
        return text;
    };
    m_first = add(true, "conflictFirst");
    m_second = add(false, "conflictSecond");
    layout->addLayout(sides);
}

void ConflictsPage::addForm(QVBoxLayout* layout)
{
    m_person = new ChoiceBox{ConflictWords::person()};
    m_personField = formField(m_person, m_person, "conflictPerson", {});
    m_personField.name(ConflictWords::person());
    m_reason = shortText();
    m_reasonField = formField(m_reason, m_reason, "conflictReason", ConflictWords::reasonHint());
    m_reasonField.name(ConflictWords::reason());
    layout->addWidget(m_personField.around);
    layout->addWidget(m_reasonField.around);
    m_rename = labelOf(ConflictWords::renameHint(), "soft");
    layout->addWidget(m_rename);
    auto* buttons = new WrapLayout{8, false};
    for (const auto& [holds, name] :
         {std::pair{Holds::First, "decideFirst"}, std::pair{Holds::Second, "decideSecond"},
          std::pair{Holds::OneThing, "decideOneThing"}, std::pair{Holds::TwoThings, "decideTwoThings"}}) {
        auto* button = buttonOf({}, name);
        button->setAutoDefault(true);
        connect(button, &QPushButton::clicked, this, [this, holds = holds] { decideAs(holds); });
        buttons->addWidget(button);
        m_choices.emplace_back(holds, button);
    }
    layout->addLayout(buttons);
}

void ConflictsPage::setLook(const Look& look)
{
    m_rows->setLook(look);
}

void ConflictsPage::showAirframe(std::optional<AirframeId> airframe)
{
    m_airframe = airframe;
    m_result->hide();
    refresh();
}

QString ConflictsPage::leftUndone() const
{
    return m_reason->toPlainText().trimmed().isEmpty() ? QString{} : ConflictWords::leftUndone();
}

void ConflictsPage::refresh()
{
    const std::optional<Conflict> shown =
        m_shown < 0 ? std::nullopt : std::optional{m_told[static_cast<std::size_t>(m_shown)].conflict};
    Problem problem;
    std::vector<Person> persons;
    if (!take(m_records.openConflicts(), m_told, problem) || !take(m_records.persons(), persons, problem)) {
        emit problemArose(ProblemWords::sentence(problem, {}));
        return;
    }
    m_person->fill(ConflictWords::choosePerson(), persons);
    std::vector<RowText> rows;
    for (const ToldConflict& told : m_told)
        rows.push_back(
            {MarkShape::HalfDisc, Role::InkSoft, ConflictWords::title(told), ChainWords::fact(told.second)});
    m_rows->display(rows);
    m_count->setText(m_told.empty() ? ConflictWords::none()
                                    : ConflictWords::count(static_cast<int>(m_told.size())));
    const auto again = std::ranges::find_if(
        m_told, [&shown](const ToldConflict& told) { return shown && told.conflict == *shown; });
    if (again != m_told.end())
        m_rows->choose(static_cast<int>(again - m_told.begin()));
    else
        m_reason->clear(); // it was typed for one that is decided
    display(m_rows->chosen());
}

void ConflictsPage::display(int row)
{
    const bool isThere = row >= 0 && row < static_cast<int>(m_told.size());
    m_body->setVisible(isThere);
    m_shown = isThere ? row : -1;
    if (!isThere)
        return;
    const ToldConflict& told = m_told[static_cast<std::size_t>(row)];
    m_title->setText(ConflictWords::title(told));
    m_body->setProperty(kIsAbout, m_title->text());
    m_until->setText(ConflictWords::until(told.conflict.kind));
    const bool keptBack = isKeptBack(told.conflict);
    m_first->setText(sideOf(told.first, keptBack));
    m_second->setText(sideOf(told.second, keptBack));
    m_rename->setVisible(told.conflict.kind == ConflictKind::Names &&
                         !mayBeDecided(told.conflict, Holds::OneThing));
    for (const auto& [holds, button] : m_choices) {
        button->setText(ConflictWords::decision(told.conflict.kind, holds));
        button->setVisible(mayBeDecided(told.conflict, holds));
    }
    sayIn(m_personField.problem, {});
    sayIn(m_reasonField.problem, {});
}

// In a record that is open the second person may have yet to work without seeing what was read.
bool ConflictsPage::isKeptBack(const Conflict& conflict) const
{
    if (conflict.kind != ConflictKind::Corrections || !m_airframe)
        return false;
    const auto reading = m_records.reading(ReadingId{conflict.first});
    const auto open = m_records.openRecord(*m_airframe);
    return !reading || !open || (open.value() && reading.value().reading.record == open.value());
}

// What was on the screen when it was pressed.
void ConflictsPage::decideAs(Holds holds)
{
    if (m_shown < 0)
        return;
    const Conflict conflict = m_told[static_cast<std::size_t>(m_shown)].conflict;
    const auto person = m_person->chosen<PersonId>();
    const QString reason = m_reason->toPlainText().trimmed();
    sayIn(m_personField.problem, person ? QString{} : ConflictWords::personMissing());
    sayIn(m_reasonField.problem, reason.isEmpty() ? ConflictWords::reasonMissing() : QString{});
    if (!person || reason.isEmpty())
        return focusFirstLack({&m_personField, &m_reasonField});
    Decision decision;
    decision.kind = conflict.kind;
    decision.first.bytes = conflict.first;
    decision.second.bytes = conflict.second;
    decision.holds = holds;
    decision.person = *person;
    decision.reason = reason.toStdString();
    decision.stamp.by = person;
    if (const Outcome kept = decide(m_records, decision); !kept) {
        emit problemArose(ProblemWords::sentence(kept.problem(), {}));
        return;
    }
    refresh();
    sayIn(m_result, ConflictWords::decided());
    emit airframesChanged();
    if (m_told.empty())
        setFocus();
    else
        m_rows->focusChosen();
}

void ConflictsPage::focusInEvent(QFocusEvent*)
{
    m_rows->focusChosen();
}

} // namespace rig
