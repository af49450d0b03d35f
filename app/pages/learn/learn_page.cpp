#include "app/pages/learn/learn_page.h"

#include "app/pages/learn/lesson_pictures.h"
#include "app/pages/learn/measuring_panel.h"
#include "app/pages/learn/practice_panel.h"
#include "app/pages/learn/recall_panel.h"
#include "app/pages/learn/sign_off_panel.h"
#include "app/pages/learn/study_panel.h"
#include "app/pages/prompts.h"
#include "app/report/airframe_card.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/plan_widget.h"
#include "app/widgets/row_list.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/formats.h"
#include "app/wording/learn_words.h"
#include "app/wording/paper_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/prompt_words.h"
#include "app/wording/report_words.h"
#include "app/wording/signing_words.h"
#include "app/wording/window_words.h"

#include <QCoreApplication>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kSideWidth = 310;
constexpr double kMostOfWidth = 0.37;

MarkShape shapeOf(const LearnRow& row)
{
    if (!row.last)
        return MarkShape::Waiting;
    return row.last->missedNothing() ? MarkShape::Done : MarkShape::Diamond;
}

Role roleOf(const LearnRow& row)
{
    if (!row.last)
        return Role::InkSoft;
    return row.last->missedNothing() ? Role::Accent : Role::Outside;
}

QString wordOf(const LearnRow& row)
{
    if (!isBallJoint(row.coupling.kind))
        return LearnWords::notPractised(row.coupling.kind);
    return row.last ? LearnWords::asked(*row.last) : LearnWords::notAsked();
}

QString captionOf(const Photo& photo)
{
    const QString note = QString::fromStdString(photo.note);
    return note.isEmpty() ? LearnWords::photoOf(photo.of) : LearnWords::photoNoted(photo.of, note);
}

PlanView planOf(const LearnView& view, std::optional<CouplingId> chosen)
{
    PlanView plan;
    plan.glider = gliderOf(view.airframe);
    plan.withOrder = true;
    int order = 0;
    for (const LearnRow& row : view.rows) {
        if (chosen == row.coupling.id)
            plan.chosen = plan.items.size();
        PlanItem item = planItemOf(row.coupling, QString::fromStdString(row.coupling.name));
        item.order = ++order;
        item.mark = shapeOf(row);
        item.role = roleOf(row);
        item.word = wordOf(row);
        plan.items.push_back(item);
    }
    return plan;
}

} // namespace

LearnPage::LearnPage(Records& records, const Clock& clock, Prompts& prompts, LearnerMemory memory,
                     QWidget* parent)
    : Page{parent}, m_records{records}, m_clock{clock}, m_prompts{prompts}, m_memory{std::move(memory)},
      m_lessons{records, clock}, m_signOffs{records, clock}, m_measuring{records, clock}
{
    setObjectName("learn");
    setAccessibleName(WindowWords::knowThisAirframe());
    setFocusPolicy(Qt::StrongFocus);
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    layout->addWidget(makeSide());
    layout->addWidget(makeParts(), 1);
    connectPanels();
    setLook({});
}

QWidget* LearnPage::makeSide()
{
    auto* side = new QFrame;
    side->setProperty("card", true);
    m_side = side;
    auto* layout = new QVBoxLayout{side};
    layout->setContentsMargins(12, 14, 12, 12);
    layout->setSpacing(6);
    QLabel* who = labelOf(LearnWords::whoLearns(), "label");
    m_who = new ChoiceBox{withoutMnemonic(LearnWords::whoLearns())};
    m_who->setObjectName("whoLearns");
    who->setBuddy(m_who);
    layout->addWidget(who);
    layout->addWidget(m_who);
    auto* inside = new QWidget;
    auto* inner = new QVBoxLayout{inside};
    inner->setContentsMargins(0, 4, 0, 0);
    inner->addWidget(labelOf(LearnWords::thisAirframe(), "label"));
    m_plan = new PlanWidget;
    m_plan->setObjectName("learnPlan");
    inner->addWidget(m_plan);
    m_rows = new RowList{"learnCoupling", LearnWords::couplings()};
    inner->addWidget(m_rows);
    inner->addWidget(labelOf(LearnWords::listKeys(), "soft"));
    inner->addStretch(1);
    layout->addWidget(new FlowScroll{inside}, 1);
    auto* card = buttonOf(LearnWords::saveCard(), "saveCard");
    layout->addWidget(card, 0, Qt::AlignLeft);
    m_cardSaid = labelOf({}, "soft", "cardSaid");
    m_cardSaid->hide();
    layout->addWidget(m_cardSaid);
    connect(card, &QPushButton::clicked, this, &LearnPage::saveCard);
    connect(m_rows, &RowList::rowChosen, this, &LearnPage::chooseCoupling);
    connect(m_rows, &RowList::rowOpened, this, [this](int row) {
        chooseCoupling(row);
        showPart(LearnPart::Coupling);
    });
    connect(m_plan, &PlanWidget::couplingChosen, this, [this](int index) {
        m_rows->choose(index);
        chooseCoupling(index);
    });
    connect(m_who, &QComboBox::activated, this, [this] {
        m_person = m_who->chosen<PersonId>();
        if (m_airframe && m_person && m_memory.keep)
            m_memory.keep(*m_airframe, *m_person);
        m_practice->forget();
        m_recall->forget();
        refresh();
    });
    return side;
}

QWidget* LearnPage::makeParts()
{
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* layout = new QVBoxLayout{card};
    layout->setContentsMargins(14, 10, 1, 1);
    layout->setSpacing(8);
    auto* head = new WrapLayout{6, false};
    const std::array texts{LearnWords::partCoupling(), LearnWords::partPractice(),  LearnWords::partRecall(),
                           LearnWords::partSignOff(),  LearnWords::partMeasuring(), LearnWords::partStudy()};
    m_lesson = new CouplingLessonPanel;
    m_practice = new PracticePanel;
    m_recall = new RecallPanel;
    m_signOff = new SignOffPanel;
    m_measure = new MeasuringPanel;
    m_study = new StudyPanel;
    const std::array<QWidget*, kParts> panels{m_lesson, m_practice, m_recall, m_signOff, m_measure, m_study};
    m_stack = new QStackedWidget;
    for (std::size_t i = 0; i < panels.size(); ++i) {
        auto* button = buttonOf(texts[i], "", "chip");
        button->setObjectName(QStringLiteral("learnPart%1").arg(i));
        button->setCheckable(true);
        button->setAutoExclusive(true);
        connect(button, &QPushButton::clicked, this, [this, i] { showPart(static_cast<LearnPart>(i)); });
        head->addWidget(button);
        m_buttons[i] = button;
        panels[i]->setContentsMargins(4, 6, 18, 14);
        m_scrolls[i] = new FlowScroll{panels[i]};
        m_scrolls[i]->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded); // nothing out of reach
        m_stack->addWidget(m_scrolls[i]);
    }
    m_message = labelOf({}, "body", "learnMessage");
    m_message->setAlignment(Qt::AlignCenter);
    m_message->setMargin(24);
    m_stack->addWidget(m_message);
    layout->addLayout(head);
    layout->addWidget(m_stack, 1);
    return card;
}

void LearnPage::connectPanels()
{
    connect(m_practice, &PracticePanel::beginAsked, this, [this](std::optional<CouplingId> coupling) {
        const auto begun = m_lessons.beginPractice(*m_airframe, *m_person, coupling);
        succeeded(begun ? Outcome{Done{}} : Outcome{begun.problem()});
    });
    connect(m_practice, &PracticePanel::answered, this,
            [this](const PracticeView& shown, SeatingCall said, bool sure) {
                const auto kept = m_lessons.answer(shown, said, sure);
                if (kept)
                    m_practice->showAnswered(kept.value());
                succeeded(kept ? Outcome{Done{}} : Outcome{kept.problem()});
            });
    connect(m_practice, &PracticePanel::nextAsked, this, &LearnPage::refresh);
    connect(m_recall, &RecallPanel::beginAsked, this, [this] {
        const auto begun = m_lessons.beginRecall(*m_airframe, *m_person, kRecallAsked);
        succeeded(begun ? Outcome{Done{}} : Outcome{begun.problem()});
    });
    connect(m_recall, &RecallPanel::answered, this,
            [this](const RecallView& shown, std::size_t choice, bool sure) {
                const RecallTask& task = *shown.task();
                const auto said = [&](std::size_t one) {
                    return RecallPanel::choiceOf(shown, task.choices[one]).toStdString();
                };
                const Outcome kept = m_lessons.answer(shown, RecallPanel::askedOf(shown, task).toStdString(),
                                                      said(task.right), said(choice), sure);
                if (kept)
                    m_recall->showAnswered(choice, sure);
                succeeded(kept);
            });
    connect(m_recall, &RecallPanel::nextAsked, this, &LearnPage::refresh);
    connect(m_signOff, &SignOffPanel::supervisedAsked, this,
            [this](PersonId learner, const SupervisedEntry& entry) {
                if (succeeded(m_signOffs.add(learner, entry)))
                    m_signOff->showKept(SigningWords::supervisedKept());
            });
    connect(m_signOff, &SignOffPanel::said, this, [this](QWidget* where) {
        m_scrolls[static_cast<std::size_t>(LearnPart::SignOff)]->bringIntoView(where);
    });
    connect(m_signOff, &SignOffPanel::takeBackAsked, this,
            [this](SupervisedId rigging, PersonId who, const QString& what) {
                m_prompts.askText(this, SigningWords::takeBackTitle(), SigningWords::whyTakenBack(what),
                                  SigningWords::takenBackFor(), [this, rigging, who](const QString& reason) {
                                      if (succeeded(m_signOffs.takeBack(rigging, who, reason.toStdString())))
                                          m_signOff->showTakenBack(SigningWords::takenBackNow());
                                  });
            });
    connect(m_signOff, &SignOffPanel::signAsked, this, [this](PersonId person, const SignOffEntry& entry) {
        if (succeeded(m_signOffs.sign(*m_airframe, person, entry)))
            m_signOff->showKept(entry.kind == SignOffKind::Signed
                                    ? SigningWords::signedNow(Formats{}.day(*entry.day))
                                    : SigningWords::withdrawnNow());
    });
    connect(m_measure, &MeasuringPanel::readingTaken, this,
            [this](PersonId person, CouplingId coupling, GaugeId gauge, const GaugeReading& reading) {
                if (succeeded(m_measuring.keep(person, coupling, gauge, reading)))
                    m_measure->showKept();
            });
    const auto takeBack = [this](const PracticeReading& reading, const QString& what) {
        m_prompts.askText(this, SigningWords::takeBackTitle(), SigningWords::whyTakenBack(what),
                          PromptWords::noReadingHere(), [this, reading](const QString& reason) {
                              succeeded(m_measuring.takeBack(reading, reason.toStdString()));
                          });
    };
    connect(m_measure, &MeasuringPanel::takeBackAsked, this, takeBack);
    connect(m_study, &StudyPanel::takeBackAsked, this, takeBack);
    connect(m_measure, &MeasuringPanel::shareAsked, this,
            [this](PersonId person, bool isShared) { succeeded(m_measuring.share(person, isShared)); });
    connect(
        m_study, &StudyPanel::beginAsked, this,
        [this](const std::vector<CouplingId>& couplings, const std::vector<PersonId>& persons, int repeats) {
            succeeded(m_measuring.begin(*m_airframe, m_person.value_or(persons.front()), couplings, persons,
                                        repeats));
        });
    connect(m_study, &StudyPanel::readingTaken, this,
            [this](const StudyPlace& place, GaugeId gauge, const GaugeReading& reading) {
                if (succeeded(m_measuring.keep(place, gauge, reading)))
                    m_study->showKept(place);
            });
}

bool LearnPage::succeeded(const Outcome& outcome)
{
    if (!outcome)
        emit problemArose(ProblemWords::sentence(outcome.problem(), {}));
    refresh();
    return static_cast<bool>(outcome);
}

void LearnPage::setLook(const Look& look)
{
    m_scale = look.fonts.scale;
    fitSide();
    m_rows->setLook(look);
    m_plan->setLook(look);
    m_lesson->setLook(look);
    m_practice->setLook(look);
    m_recall->setLook(look);
    m_measure->setLook(look);
    m_study->setLook(look);
}

// In large text the part at the right needs the room more.
void LearnPage::fitSide()
{
    const double most = std::max(kSideWidth, kMostOfWidth * width());
    m_side->setFixedWidth(static_cast<int>(std::lround(std::min(kSideWidth * std::min(m_scale, 1.4), most))));
}

void LearnPage::resizeEvent(QResizeEvent* event)
{
    fitSide();
    Page::resizeEvent(event);
}

void LearnPage::showAirframe(std::optional<AirframeId> airframe)
{
    if (m_airframe != airframe) {
        m_coupling.reset();
        m_person.reset();
        m_practice->forget();
        m_recall->forget();
        m_study->forget();
        m_part = LearnPart::Coupling;
        sayIn(m_cardSaid, {});
    }
    if (m_airframe != airframe && airframe && m_memory.last)
        m_person = m_memory.last(*airframe);
    m_airframe = airframe;
    refresh();
}

void LearnPage::catchUp()
{
    refresh();
}

void LearnPage::showMessage(const QString& sentence)
{
    m_message->setText(sentence);
    m_stack->setCurrentWidget(m_message);
}

void LearnPage::refresh()
{
    if (!m_airframe) {
        m_view = {};
        m_side->hide();
        return showMessage(LearnWords::noAirframe());
    }
    auto view = m_lessons.view(*m_airframe, m_person);
    if (!view) {
        m_view = {};
        m_isRead = false;
        const QString sentence = ProblemWords::sentence(view.problem(), {});
        showMessage(sentence);
        emit problemArose(sentence);
        return;
    }
    m_view = std::move(view).value();
    if (m_person && nameOfPerson().isEmpty())
        m_person.reset(); // remembered, and not among those that this file knows
    m_isRead = true;
    showList();
    showPart(m_part);
}

void LearnPage::showList()
{
    m_side->show();
    m_who->fill(LearnWords::choosePerson(), m_view.persons);
    m_who->choose(m_person);
    std::vector<RowText> rows;
    for (const LearnRow& row : m_view.rows)
        rows.push_back({shapeOf(row), roleOf(row), QString::fromStdString(row.coupling.name), wordOf(row)});
    m_rows->display(rows);
    if (!m_coupling || !m_view.find(*m_coupling))
        m_coupling = m_view.rows.empty() ? std::nullopt : std::optional{m_view.rows.front().coupling.id};
    const auto chosen = std::ranges::find_if(
        m_view.rows, [this](const LearnRow& row) { return m_coupling == row.coupling.id; });
    if (chosen != m_view.rows.end())
        m_rows->choose(static_cast<int>(chosen - m_view.rows.begin()));
    m_plan->setView(planOf(m_view, m_coupling));
}

void LearnPage::chooseCoupling(int row)
{
    m_coupling = m_view.rows[static_cast<std::size_t>(row)].coupling.id;
    m_plan->setView(planOf(m_view, m_coupling));
    showPart(m_part);
}

void LearnPage::showPart(LearnPart part)
{
    m_part = part;
    m_buttons[static_cast<std::size_t>(part)]->setChecked(true);
    if (!m_airframe || !m_isRead)
        return; // what is wrong stands there
    if (m_view.rows.empty())
        return showMessage(LearnWords::noCouplings());
    if (part == LearnPart::Coupling)
        return showCoupling();
    if (part == LearnPart::Study) {
        const auto view = m_measuring.study(*m_airframe);
        if (!view)
            return showMessage(ProblemWords::sentence(view.problem(), {}));
        m_study->display(view.value());
        if (view.value().next)
            mark(view.value().next->coupling);
        return m_stack->setCurrentIndex(static_cast<int>(part));
    }
    if (!m_person)
        return showMessage(LearnWords::chooseWhoLearns());
    showOfPerson();
}

void LearnPage::showOfPerson()
{
    const auto show = [this](const auto& view, const auto& display) {
        if (!view)
            return showMessage(ProblemWords::sentence(view.problem(), {}));
        m_stack->setCurrentIndex(static_cast<int>(m_part));
        display(view.value());
    };
    switch (m_part) {
    case LearnPart::Practice:
        return show(m_lessons.practice(*m_airframe, *m_person), [this](const PracticeView& view) {
            m_practice->display(view, m_coupling);
            if (const auto asked = m_practice->asked())
                mark(*asked);
        });
    case LearnPart::Recall: {
        return show(m_lessons.recall(*m_airframe, *m_person,
                                     [](const RecallView& view, const RecallTask& task) {
                                         return RecallPanel::askedOf(view, task).toStdString();
                                     }),
                    [this](const RecallView& view) { m_recall->display(view); });
    }
    case LearnPart::SignOff:
        return show(m_signOffs.view(*m_airframe, *m_person),
                    [this](const SignOffView& view) { m_signOff->display(view); });
    case LearnPart::Measuring:
        return show(m_measuring.measuring(*m_airframe, *m_person), [this](const MeasuringView& view) {
            m_measure->display(view, nameOfPerson(), m_coupling);
        });
    case LearnPart::Coupling:
    case LearnPart::Study:
        break;
    }
}

// What is asked about stands marked in the list and on the plan.
void LearnPage::mark(CouplingId coupling)
{
    const auto row = std::ranges::find_if(
        m_view.rows, [coupling](const LearnRow& one) { return one.coupling.id == coupling; });
    if (m_coupling == coupling || row == m_view.rows.end())
        return;
    m_coupling = coupling;
    m_rows->choose(static_cast<int>(row - m_view.rows.begin()));
    m_plan->setView(planOf(m_view, m_coupling));
}

void LearnPage::saveCard()
{
    auto drawn = m_lessons.drawnLayouts(*m_airframe);
    if (!drawn)
        return showMessage(ProblemWords::sentence(drawn.problem(), {}));
    CardSource source{m_view.airframe, {}, std::move(drawn).value()};
    for (const LearnRow& row : m_view.rows)
        source.couplings.push_back(row.coupling);
    if (source.couplings.empty())
        return showMessage(LearnWords::noCouplings());
    const QString path = m_prompts.askSaveFile(this, PaperWords::pdfFiles(), cardFileName(source));
    if (path.isEmpty())
        return;
    const Printing printing{Paper::A5, m_clock.now().localDay(),
                            ReportWords::program(QCoreApplication::applicationVersion())};
    if (writeCard(path, source, printing))
        sayIn(m_cardSaid, ReportWords::written(path));
    else
        emit problemArose(ReportWords::cannotWrite(path));
}

QString LearnPage::nameOfPerson() const
{
    const auto found =
        std::ranges::find_if(m_view.persons, [this](const Person& person) { return m_person == person.id; });
    return found == m_view.persons.end() ? QString{} : QString::fromStdString(found->name);
}

void LearnPage::showCoupling()
{
    if (const auto lesson = lessonOf(*m_coupling)) {
        m_lesson->display(*lesson);
        m_stack->setCurrentIndex(static_cast<int>(LearnPart::Coupling));
    }
}

std::optional<CouplingLesson> LearnPage::lessonOf(CouplingId coupling)
{
    auto facts = m_lessons.coupling(*m_airframe, coupling);
    if (!facts) {
        showMessage(ProblemWords::sentence(facts.problem(), {}));
        return std::nullopt;
    }
    CouplingLesson lesson;
    lesson.coupling = facts.value().coupling;
    lesson.joint = facts.value().joint;
    lesson.gapTellsNothing = facts.value().gapTellsNothing;
    lesson.strip = std::move(facts.value().strip);
    for (const PhotoOf of : {PhotoOf::Locked, PhotoOf::PartSeated, PhotoOf::Empty, PhotoOf::Access}) {
        const Photo* photo = facts.value().photos[static_cast<std::size_t>(of)];
        if (!photo)
            continue;
        LessonPhoto shown{of,
                          m_pictures.of(photo->id,
                                        [&]() -> std::optional<PhotoImage> {
                                            auto image = m_records.image(photo->id);
                                            return image ? std::optional{std::move(image).value()}
                                                         : std::nullopt;
                                        }),
                          captionOf(*photo)};
        if (!shown.image.isNull())
            lesson.photos.push_back(std::move(shown));
    }
    return lesson;
}

void LearnPage::keyPressEvent(QKeyEvent* event)
{
    const bool isTaken = (m_part == LearnPart::Coupling && m_lesson->takeKey(event)) ||
                         (m_part == LearnPart::Practice && m_person && m_practice->takeKey(event)) ||
                         (m_part == LearnPart::Recall && m_person && m_recall->takeKey(event)) ||
                         (m_part == LearnPart::Measuring && m_person && m_measure->takeKey(event)) ||
                         (m_part == LearnPart::Study && m_study->takeKey(event));
    if (!isTaken)
        Page::keyPressEvent(event);
}

} // namespace rig
