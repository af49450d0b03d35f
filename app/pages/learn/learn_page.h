#pragma once

#include "app/pages/learn/coupling_lesson.h"
#include "app/pages/learn/lesson_presenter.h"
#include "app/pages/learn/measuring_presenter.h"
#include "app/pages/learn/sign_off_presenter.h"
#include "app/pages/page.h"
#include "app/photos/held_pictures.h"

#include <array>
#include <functional>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace rig {

class ChoiceBox;
class FlowScroll;
class MeasuringPanel;
class PlanWidget;
class PracticePanel;
class Prompts;
class RecallPanel;
class RowList;
class SignOffPanel;
class StudyPanel;

// Who learnt last on an airframe, beyond one run of the program. Either may be empty: nothing is kept.
struct LearnerMemory
{
    std::function<std::optional<PersonId>(AirframeId)> last{};
    std::function<void(AirframeId, PersonId)> keep{};
};

enum class LearnPart { Coupling, Practice, Recall, SignOff, Measuring, Study };

// One airframe to be learnt: where its couplings are, how each looks locked and otherwise, rounds of
// practice, riggings under supervision and who signed. It grants nothing. The plan and the list at the left,
// the chosen part at the right.
class LearnPage : public Page
{
    Q_OBJECT

public:
    // All three must outlive the page.
    LearnPage(Records& records, const Clock& clock, Prompts& prompts, LearnerMemory memory = {},
              QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId> airframe) override;
    void setLook(const Look& look) override;
    void catchUp() override;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    static constexpr int kParts = 6;

    QWidget* makeSide();
    QWidget* makeParts();
    void connectPanels();
    void refresh();
    void showList();
    void showPart(LearnPart part);
    void showCoupling();
    void fitSide();
    void showOfPerson();
    void chooseCoupling(int row);
    void saveCard();
    void mark(CouplingId coupling);
    QString nameOfPerson() const;
    bool succeeded(const Outcome& outcome);
    void showMessage(const QString& sentence);
    std::optional<CouplingLesson> lessonOf(CouplingId coupling);

    Records& m_records;
    const Clock& m_clock;
    Prompts& m_prompts;
    LearnerMemory m_memory;
    HeldPictures m_pictures;
    LessonPresenter m_lessons;
    SignOffPresenter m_signOffs;
    MeasuringPresenter m_measuring;
    LearnView m_view;
    double m_scale = 1;
    bool m_isRead = false; // m_view is what the file says
    std::optional<AirframeId> m_airframe;
    std::optional<PersonId> m_person;
    std::optional<CouplingId> m_coupling;
    LearnPart m_part = LearnPart::Coupling;

    QWidget* m_side = nullptr;
    ChoiceBox* m_who = nullptr;
    PlanWidget* m_plan = nullptr;
    RowList* m_rows = nullptr;
    QLabel* m_cardSaid = nullptr;
    std::array<QPushButton*, kParts> m_buttons{};
    QStackedWidget* m_stack = nullptr;
    std::array<FlowScroll*, kParts> m_scrolls{};
    QLabel* m_message = nullptr;
    CouplingLessonPanel* m_lesson = nullptr;
    PracticePanel* m_practice = nullptr;
    RecallPanel* m_recall = nullptr;
    SignOffPanel* m_signOff = nullptr;
    MeasuringPanel* m_measure = nullptr;
    StudyPanel* m_study = nullptr;
};

} // namespace rig
