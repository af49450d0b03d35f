#include "app/pages/setup/coupling_form.h"
#include "app/pages/setup/list_panel.h"
#include "app/pages/setup/part_panels.h"
#include "app/pages/setup/photos_form.h"
#include "app/photos/photo_picture.h"
#include "app/wording/coupling_words.h"
#include "app/wording/day_words.h"
#include "app/wording/formats.h"
#include "app/wording/photo_words.h"
#include "app/wording/problem_words.h"
#include "core/day_entry.h"
#include "core/store/names.h"

#include <QCheckBox>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

// A new fitting of one coupling; says that it ends the old baseline.
EntryForm<FittingEntry>* makeFittingForm()
{
    using Words = CouplingWords;
    auto* form = new EntryForm<FittingEntry>{Words::startFitting(), true};
    form->setExplanation(Words::fittingMeaning(), "caution");
    form->day({"fittingDay", Words::fittingDay(), DayWords::hint(), Field::FittingDay}, &FittingEntry::day);
    form->choice({"fittingKind", Words::fittingKind(), {}, {}}, &FittingEntry::kind, FittingKind::Other,
                 Words::fittingKindName);
    form->line({"fittingReason", Words::fittingReason(), Words::fittingReasonHint(), Field::FittingReason},
               &FittingEntry::reason, Form::Width::Whole);
    return form;
}

// The usual couplings to tick.
class UsualCouplingsForm : public Form
{
public:
    UsualCouplingsForm() : Form{CouplingWords::addChosen(), true}
    {
        setTitle(CouplingWords::usualTitle());
        setExplanation(CouplingWords::usualMeaning());
        auto* list = new QWidget;
        auto* layout = new QVBoxLayout{list};
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(2);
        m_all = new QCheckBox{CouplingWords::allOfThese()};
        m_all->setObjectName("usualAll");
        layout->addWidget(m_all);
        // Only of a press: it follows the single ones.
        connect(m_all, &QCheckBox::clicked, this, &UsualCouplingsForm::tickAll);
        for (std::size_t i = 0; i < m_boxes.size(); ++i) {
            m_boxes[i] = new QCheckBox;
            m_boxes[i]->setObjectName(QStringLiteral("usual%1").arg(i));
            layout->addWidget(m_boxes[i]);
            connect(m_boxes[i], &QCheckBox::toggled, this, &UsualCouplingsForm::ticksOne);
        }
        addWidget(list);
    }

    // Nothing is ticked; what the airframe has already cannot be.
    void begin(const std::vector<CouplingRow>& known)
    {
        bool isOneMissing = false;
        for (std::size_t i = 0; i < m_boxes.size(); ++i) {
            const QString name = usualName(kUsualCouplings[i]);
            const bool there = std::ranges::any_of(known, [&name](const CouplingRow& row) {
                return comparable(row.coupling.name) == comparable(name.toStdString());
            });
            m_boxes[i]->setChecked(false);
            m_boxes[i]->setEnabled(!there);
            m_boxes[i]->setText(there ? CouplingWords::alreadyThere(name) : name);
            isOneMissing = isOneMissing || !there;
        }
        m_all->setChecked(false);
        m_all->setEnabled(isOneMissing);
        showStatus({});
        m_all->setFocus();
    }

    std::vector<UsualCoupling> ticked() const
    {
        std::vector<UsualCoupling> chosen;
        for (std::size_t i = 0; i < m_boxes.size(); ++i)
            if (m_boxes[i]->isChecked())
                chosen.push_back(kUsualCouplings[i]);
        return chosen;
    }

    bool hasUnsaved() const override { return !ticked().empty(); }

private:
    void tickAll(bool tick)
    {
        for (QCheckBox* box : m_boxes)
            box->setChecked(tick && box->isEnabled());
    }

    void ticksOne()
    {
        m_all->setChecked(std::ranges::all_of(
            m_boxes, [](const QCheckBox* box) { return box->isChecked() || !box->isEnabled(); }));
        emit edited();
    }

    QCheckBox* m_all = nullptr;
    std::array<QCheckBox*, kUsualCouplings.size()> m_boxes{};
};

class CouplingsPanel : public OrderPanel
{
public:
    CouplingsPanel(SetUpPresenter& presenter, Prompts& prompts)
        : OrderPanel{presenter,
                     prompts,
                     {SetUpWords::couplingsPart(), SetUpWords::whyCouplings()},
                     {"coupling", CouplingWords::title(), CouplingWords::none()},
                     CouplingWords::takeOutQuestion()}
    {
        makeButtons();
        m_form = new CouplingForm;
        m_fitting = makeFittingForm();
        m_usual = new UsualCouplingsForm;
        addForm(m_form, [this] {
            finish(m_form,
                   this->presenter().couplings.save(m_form->entry(), airframe(), m_form->of<CouplingId>()));
        });
        addForm(m_fitting, [this] {
            finish(m_fitting, this->presenter().couplings.save(m_fitting->entry(), airframe(),
                                                               *m_fitting->of<CouplingId>()));
        });
        m_photos = new PhotosForm{prompts};
        addForm(m_usual, [this] { addUsual(); });
        addForm(m_photos, [this] { savePhoto(); });
        connect(m_photos, &PhotosForm::withdrawAsked, this, &CouplingsPanel::withdrawPhoto);
    }

    void display(const SetUpView& view) override
    {
        const bool isOther = leaveFor(view.airframe);
        m_couplings = view.couplings;
        m_airframe = view.airframe;
        m_today = view.today;
        std::vector<Row> rows;
        for (const CouplingRow& row : m_couplings)
            rows.push_back({row.coupling.id.bytes, shown(row.coupling.name), row.coupling.inUse,
                            rowText(row, static_cast<int>(rows.size()) + 1)});
        showRows(std::move(rows));
        if (isOther)
            arrive();
        if (const auto open = m_photos->of<CouplingId>(); isOther && open && !m_photos->isHidden())
            showPhotos(open->bytes);
    }

    void setLook(const Look& look) override
    {
        OrderPanel::setLook(look);
        m_photos->setLook(look);
        m_form->setLook(look);
    }

private:
    void makeButtons()
    {
        const auto change = [this](const Row& row) { open(row.id); };
        const auto order = makeOrderButtons("moveUp", "moveDown", "takeOutOfUse");
        addButtons(
            {buttonFor("changeCoupling", SetUpWords::edit(), change), order.up, order.down,
             buttonFor("newFitting", CouplingWords::newFitting(),
                       [this](const Row& row) { openFitting(row); }),
             buttonFor("couplingPhotos", PhotoWords::photos(), [this](const Row& row) { openPhotos(row); }),
             order.use});
        auto* usual = button("usualCouplings", CouplingWords::usual(), [this] {
            show(m_usual);
            m_usual->begin(m_couplings);
        });
        addButtons({usual, button("addCoupling", CouplingWords::add(), [this] { open({}); })});
        onOpened(change);
        beginAt(usual, false);
    }

    static RowText rowText(const CouplingRow& row, int number)
    {
        using Words = CouplingWords;
        const bool isMeasured = hasGap(row.coupling);
        RowText text =
            orderedText(shown(row.coupling.name), number, row.coupling.inUse, isMeasured && row.hasBand);
        if (!isMeasured)
            text.detail = Words::joined(Words::noGap(), Words::kindName(row.coupling.kind));
        else
            text.detail =
                Words::joined(row.hasBand ? Words::bandThere() : Words::noBandYet(),
                              isBallJoint(row.coupling.kind) ? Words::layoutShort(row.coupling.layout)
                                                             : Words::kindName(row.coupling.kind));
        if (row.fitting)
            text.detail = Words::joined(text.detail, Words::fittingSince(Formats{}.day(row.fitting->begins),
                                                                         Words::whyFitted(*row.fitting)));
        return text;
    }

    void open(std::optional<IdBytes> of)
    {
        CouplingEntry entry;
        for (const CouplingRow& row : m_couplings)
            if (of == row.coupling.id.bytes)
                entry = entryOf(row.coupling);
        m_form->setTitle(of ? CouplingWords::changeTitle(entry.name) : CouplingWords::newTitle());
        m_form->open(of, entry);
        if (m_airframe)
            m_form->showOnPlan(*m_airframe, couplingsInUse(), of ? CouplingId{*of} : CouplingId{});
        show(m_form);
    }

    std::vector<Coupling> couplingsInUse() const
    {
        std::vector<Coupling> couplings;
        for (const CouplingRow& row : m_couplings)
            if (row.coupling.inUse)
                couplings.push_back(row.coupling);
        return couplings;
    }

    void openFitting(const Row& row)
    {
        m_fitting->setTitle(CouplingWords::fittingTitle(row.name));
        m_fitting->open(row.id, {shown(dayText(m_today)), {}});
        show(m_fitting);
    }

    void openPhotos(const Row& row)
    {
        m_photos->begin(row.id, m_today);
        if (showPhotos(row.id))
            show(m_photos);
    }

    bool showPhotos(const IdBytes& coupling)
    {
        const auto rows = presenter().photos.view(airframe(), CouplingId{coupling});
        if (!rows)
            emit problemArose(ProblemWords::sentence(rows.problem(), {}));
        else
            m_photos->display(nameOf(coupling), rows.value(), [this](PhotoId photo) {
                const auto image = presenter().photos.image(photo);
                return image ? pictureOf(image.value()) : QImage{};
            });
        return static_cast<bool>(rows);
    }

    QString nameOf(const IdBytes& coupling) const
    {
        for (const CouplingRow& row : m_couplings)
            if (row.coupling.id.bytes == coupling)
                return shown(row.coupling.name);
        return {};
    }

    void savePhoto()
    {
        const CouplingId coupling = *m_photos->of<CouplingId>();
        const auto of = m_photos->entry().of;
        if (keepPhoto(presenter().photos.save(m_photos->entry(), coupling))) {
            m_photos->begin(coupling.bytes, m_today);
            m_photos->showStatus(
                PhotoWords::kept(PhotoWords::kind(*of), Formats{}.time(presenter().desk.now())));
            m_photos->focusFirst();
        }
    }

    void withdrawPhoto(PhotoId photo, const QString& reason)
    {
        if (keepPhoto(presenter().photos.withdraw(photo, reason)))
            m_photos->showStatus(PhotoWords::isWithdrawn());
    }

    // What was done to a photo, in the file and then on the form.
    bool keepPhoto(const Result<Saved>& result)
    {
        if (result)
            m_photos->showProblems(result.value().problems);
        return report(result) && showPhotos(m_photos->of<CouplingId>()->bytes);
    }

    void addUsual()
    {
        const auto ticked = m_usual->ticked();
        if (ticked.empty())
            return m_usual->showStatus(CouplingWords::tickOne());
        const Outcome added = presenter().couplings.addUsual(airframe(), ticked);
        if (added)
            show(nullptr);
        report(added);
    }

    Outcome moveThing(const IdBytes& coupling, int by) override
    {
        return presenter().couplings.move(airframe(), CouplingId{coupling}, by);
    }

    Outcome setThingInUse(const IdBytes& coupling, bool inUse) override
    {
        return presenter().couplings.setInUse(airframe(), CouplingId{coupling}, inUse);
    }

    std::vector<CouplingRow> m_couplings;
    std::optional<Airframe> m_airframe;
    Day m_today;
    CouplingForm* m_form = nullptr;
    EntryForm<FittingEntry>* m_fitting = nullptr;
    UsualCouplingsForm* m_usual = nullptr;
    PhotosForm* m_photos = nullptr;
};

} // namespace

SetUpPanel* makeCouplingsPanel(SetUpPresenter& presenter, Prompts& prompts)
{
    return new CouplingsPanel{presenter, prompts};
}

} // namespace rig
